package measuredwalk.messaging;

import java.util.List;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;

/**
 * What travels at once of a message; a message that is too long for its channel travels
 * in several parts.
 *
 * @param text what it says
 * @param picture the picture above the text, or null
 * @param document the file above the text, or null
 */
record Part(String text, @Nullable MessagePicture picture, @Nullable MessageDocument document) {

	/**
	 * The parts of a message. A text that is too long to stand under its picture follows
	 * it, and the picture goes with its own words; a file follows such a text.
	 * @return the parts in order, at least one
	 */
	static List<Part> of(OutgoingMessage message, Channel channel) {
		MessagePicture picture = message.picture();
		MessageDocument document = message.document();
		int longestCaption = channel.longestCaption();
		if ((picture == null && document == null) || longestCaption == 0) {
			return texts(message, channel).toList();
		}
		if (message.text().length() <= longestCaption) {
			return List.of(new Part(message.text(), picture, document));
		}
		Stream<Part> texts = texts(message, channel);
		if (picture == null) {
			return Stream.concat(texts, Stream.of(new Part("", null, document))).toList();
		}
		String caption = Parts.of(picture.inWords(), longestCaption).get(0);
		return Stream.concat(Stream.of(new Part(caption, picture, null)), texts).toList();
	}

	private static Stream<Part> texts(OutgoingMessage message, Channel channel) {
		return Parts.of(message.text(), channel.longestText()).stream().map((text) -> new Part(text, null, null));
	}

}
