package measuredwalk.care;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

import measuredwalk.conversations.CheckIn;
import measuredwalk.conversations.CheckIns;
import measuredwalk.conversations.Phrase;
import measuredwalk.reading.Reading;
import measuredwalk.signs.Sign;
import org.springframework.stereotype.Component;

/**
 * Finds out which of the chat's dogs a message is about, and has each heard: named ones
 * by name; without a name the one that a question waits about; otherwise it is asked,
 * never guessed.
 */
@Component
class HomeTalk {

	private final CheckIns checkIns;

	private final Hearing hearing;

	private final WhichDog which;

	private final Commands commands;

	private final Nameless nameless;

	private final Pictures pictures;

	HomeTalk(CheckIns checkIns, Hearing hearing, WhichDog which, Commands commands, Nameless nameless,
			Pictures pictures) {
		this.pictures = pictures;
		this.checkIns = checkIns;
		this.hearing = hearing;
		this.which = which;
		this.commands = commands;
		this.nameless = nameless;
	}

	/**
	 * A picture without words is of the dog that is talked about, otherwise it is asked.
	 */
	void see(List<Turn> dogs, Reply reply) {
		asked(dogs).or(() -> (dogs.size() == 1) ? Optional.of(dogs.get(0)) : this.pictures.lastToldOf(dogs))
			.ifPresentOrElse((turn) -> this.pictures.keepWordless(turn, reply),
					() -> this.which.ask(dogs, true, reply));
	}

	void hear(List<Turn> dogs, Reply reply) {
		if (dogs.size() == 1) {
			this.hearing.hear(dogs.get(0), reply);
			this.pictures.keep(dogs.get(0));
			return;
		}
		List<Turn> waited = this.which.answered(dogs);
		List<Turn> named = waited.isEmpty() ? named(dogs) : waited;
		if (!waited.isEmpty()) {
			waited.forEach((turn) -> takeUp(turn, waited.size() == 1, reply));
		}
		else if (named.isEmpty()) {
			asked(dogs).ifPresentOrElse((turn) -> hearAnswer(dogs, turn, reply), () -> this.nameless.hear(dogs, reply));
		}
		else {
			hearEach(dogs, named, reply);
			named.forEach(this.pictures::keep);
		}
	}

	/** Only a correction may reach further than the dog that was asked about. */
	private void hearAnswer(List<Turn> dogs, Turn asked, Reply reply) {
		if (this.nameless.corrected(dogs, this.hearing.read(asked), reply)) {
			askOnceMore(asked, reply);
		}
		else {
			this.hearing.hear(asked, reply);
		}
		this.pictures.keep(asked);
	}

	/** The message that had to wait, now that its dog is known. */
	private void takeUp(Turn turn, boolean alone, Reply reply) {
		if (turn.text().startsWith("/")) {
			this.commands.runFor(turn, reply);
			return;
		}
		if (turn.message().wordless()) {
			this.pictures.keepWordless(turn, reply);
			return;
		}
		if (alone && openAbout(turn).isEmpty()) {
			this.hearing.hear(turn, reply);
		}
		else {
			this.hearing.hearAside(turn, reply);
		}
		this.pictures.keep(turn);
	}

	private Optional<UUID> openAbout(Turn turn) {
		return this.checkIns.current(turn.chatId()).filter((open) -> !open.asked().isEmpty()).map(CheckIn::dogId);
	}

	private static List<Turn> named(List<Turn> dogs) {
		Map<Integer, String> words = new DogWords(Turns.names(dogs)).of(dogs.get(0).english());
		return words.entrySet().stream().map((each) -> dogs.get(each.getKey()).saying(each.getValue())).toList();
	}

	private Optional<Turn> asked(List<Turn> dogs) {
		Optional<UUID> about = openAbout(dogs.get(0));
		return dogs.stream().filter((turn) -> about.filter(turn.dog().id()::equals).isPresent()).findFirst();
	}

	/**
	 * One conversation at a time: it goes on about the dog that a question waits about,
	 * or begins about the one that most was seen of. What cannot wait comes first.
	 */
	private void hearEach(List<Turn> dogs, List<Turn> named, Reply reply) {
		List<Turn> order = new ArrayList<>(named);
		order.sort(Comparator.comparing((Turn turn) -> this.hearing.read(turn).level()).reversed());
		boolean urgent = Urgency.cannotWait(this.hearing.read(order.get(0)));
		Optional<Turn> waiting = asked(dogs);
		Set<UUID> ids = new java.util.HashSet<>();
		named.forEach((turn) -> ids.add(turn.dog().id()));
		boolean talkOfAnother = waiting.isPresent() && !ids.contains(waiting.get().dog().id());
		Optional<Turn> main = (urgent && named.size() > 1) || talkOfAnother ? Optional.empty()
				: named.stream()
					.filter((turn) -> waiting.isEmpty() || waiting.get().dog().id().equals(turn.dog().id()))
					.max(Comparator.comparing((Turn turn) -> seen(turn)));
		for (Turn turn : order) {
			if (!main.filter(turn::equals).isPresent()) {
				this.hearing.hearAside(turn, reply);
			}
		}
		main.ifPresent((turn) -> this.hearing.hear(turn, reply));
		if (talkOfAnother && !urgent) {
			askOnceMore(waiting.get(), reply);
		}
	}

	private long seen(Turn turn) {
		return this.hearing.read(turn).signs().stream().filter(Sign::present).count();
	}

	private void askOnceMore(Turn waiting, Reply reply) {
		this.checkIns.current(waiting.chatId())
			.flatMap((open) -> this.checkIns.waiting(open.id(), Map.of("dog", waiting.dog().name())))
			.ifPresent(reply::ask);
	}

}
