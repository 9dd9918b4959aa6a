package measuredwalk.messaging;

import java.util.List;

import org.jspecify.annotations.Nullable;

/**
 * One message as its channel gets it; a long text travels in several.
 *
 * @param outboxId the outbox entry's number, by which a choice can be looked up later
 * @param address the chat's address on the channel
 * @param text what it says, no longer than the channel takes
 * @param choices answers to offer on buttons
 * @param png the picture to show above the text, as a PNG file, or null
 * @param file the file to hand over with the text, or null
 * @param alone what it says when picture or file are refused
 */
public record Parcel(long outboxId, String address, String text, List<String> choices, byte @Nullable [] png,
		@Nullable Document file, String alone) {

	public Parcel {
		choices = List.copyOf(choices);
	}

}
