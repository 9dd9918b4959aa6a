package measuredwalk.care;

import java.util.Map;

import measuredwalk.conversations.CheckIn;
import measuredwalk.conversations.Phrase;
import measuredwalk.reading.Correction;
import measuredwalk.reading.Reading;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Writes down what is told of one dog while the conversation is about another. */
@Component
class Aside {

	private final DogTalk talk;

	private final WhatIf whatIf;

	private final FirstDragging dragging;

	private final EntryWriter writer;

	private final OtherChats otherChats;

	private final EntryWords words;

	private final SuggestionWords suggestions;

	Aside(DogTalk talk, WhatIf whatIf, FirstDragging dragging, EntryWriter writer, OtherChats otherChats,
			EntryWords words, SuggestionWords suggestions) {
		this.talk = talk;
		this.whatIf = whatIf;
		this.dragging = dragging;
		this.writer = writer;
		this.otherChats = otherChats;
		this.words = words;
		this.suggestions = suggestions;
	}

	boolean take(Turn turn, Reading reading, @Nullable CheckIn asIf, Reply reply) {
		Correction correction = reading.correction();
		return this.whatIf.answered(turn, reply) || this.talk.saysNoWalk(turn, reading, null, reply)
				|| (correction != null && this.talk.corrected(turn, correction, null, reply))
				|| wroteDown(turn, reading, asIf, reply);
	}

	private boolean wroteDown(Turn turn, Reading reading, @Nullable CheckIn asIf, Reply reply) {
		boolean firstDragging = this.dragging.isFirst(turn, reading);
		Written written = this.writer.write(turn, reading, asIf);
		if (written.nothing()) {
			return false;
		}
		this.otherChats.told(turn, written);
		if (firstDragging) {
			this.dragging.review(turn);
		}
		reply.say(Phrase.WRITTEN_DOWN, Map.of("entry", turn.named(this.words.written(written, turn.today()))));
		reply.say(turn.named(this.suggestions.today(turn.dog())));
		return true;
	}

}
