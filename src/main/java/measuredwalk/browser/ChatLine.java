package measuredwalk.browser;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

import measuredwalk.messaging.IncomingMessage;
import measuredwalk.messaging.MessagePicture;
import measuredwalk.messaging.OutboxEntry;
import org.jspecify.annotations.Nullable;

/**
 * A line of the chat as the page shows it; public for the page template only.
 *
 * @param fromPerson true when the person wrote it
 * @param text what it says
 * @param at when it was written
 * @param choices answers to offer
 * @param picture the number of the message whose picture is shown below, or null
 * @param pictureWords what the picture shows
 * @param file the number of the message whose file is offered below, or null
 */
public record ChatLine(boolean fromPerson, String text, Instant at, List<String> choices, @Nullable Long picture,
		String pictureWords, @Nullable Long file) {

	static List<ChatLine> of(List<IncomingMessage> incoming, List<OutboxEntry> outgoing) {
		Stream<ChatLine> from = incoming.stream()
			.map((message) -> new ChatLine(true, message.text(), message.receivedAt(), List.of(), null, "", null));
		Stream<ChatLine> to = outgoing.stream().map(ChatLine::of);
		return Stream.concat(from, to).sorted(Comparator.comparing(ChatLine::at)).toList();
	}

	private static ChatLine of(OutboxEntry entry) {
		MessagePicture picture = entry.message().picture();
		return new ChatLine(false, entry.message().text(), entry.writtenAt(), entry.message().choices(),
				(picture != null) ? entry.id() : null, (picture != null) ? picture.inWords() : "",
				(entry.message().document() != null) ? entry.id() : null);
	}

	/** What the last question offers, unless the person has written since. */
	static List<String> openChoices(List<ChatLine> lines) {
		for (int i = lines.size() - 1; i >= 0 && !lines.get(i).fromPerson(); i--) {
			if (!lines.get(i).choices().isEmpty()) {
				return lines.get(i).choices();
			}
		}
		return List.of();
	}

}
