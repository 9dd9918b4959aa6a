package measuredwalk.care;

import java.util.List;
import java.util.Locale;
import java.util.Map;

import measuredwalk.conversations.Part;
import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.messaging.MessageDocument;
import measuredwalk.messaging.OutgoingMessage;
import measuredwalk.records.Records;
import org.springframework.stereotype.Component;

/** {@code /export}: a dog's record to take along, in the form that is wished for. */
@Component
class ExportTalk {

	private static final String COMMAND = "/export ";

	private static final String TEXT = "text";

	private final ExportWords words;

	private final Replies replies;

	ExportTalk(ExportWords words, Replies replies) {
		this.words = words;
		this.replies = replies;
	}

	void command(Turn turn, String wish, Reply reply) {
		String form = wish.toLowerCase(Locale.ROOT);
		Map<String, String> dog = Map.of("dog", turn.dog().name());
		if (form.contains("pdf")) {
			reply.say(file(turn, Records.Form.PDF, Phrase.EXPORT_PDF));
		}
		else if (form.contains("csv")) {
			reply.say(file(turn, Records.Form.CSV, Phrase.EXPORT_CSV));
		}
		else if (form.contains(TEXT) || form.contains(this.replies.part(Part.AS_TEXT))) {
			reply.say(this.words.of(turn.dog()));
		}
		else {
			String ofDog = (turn.dogs().size() > 1) ? COMMAND + turn.dog().name() + " " : COMMAND;
			reply.ask(Phrase.EXPORT_FORM, dog,
					List.of(ofDog + "pdf", ofDog + "csv", ofDog + this.replies.part(Part.AS_TEXT)));
		}
	}

	private OutgoingMessage file(Turn turn, Records.Form form, Phrase phrase) {
		Map<String, String> dog = Map.of("dog", turn.dog().name());
		return OutgoingMessage.of(this.replies.say(phrase, dog))
			.with(new MessageDocument(Records.name(turn.dog(), form), this.replies.say(Phrase.EXPORT_NOT_MADE, dog)));
	}

}
