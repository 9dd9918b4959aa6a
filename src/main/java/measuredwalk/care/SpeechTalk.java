package measuredwalk.care;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import measuredwalk.conversations.CheckIn;
import measuredwalk.conversations.CheckIns;
import measuredwalk.conversations.Part;
import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.conversations.Tongue;
import measuredwalk.conversations.Tongues;
import measuredwalk.household.Households;
import measuredwalk.messaging.Chats;
import measuredwalk.messaging.Outbox;
import measuredwalk.speech.Speaking;
import measuredwalk.speech.Speech;
import measuredwalk.speech.Units;
import org.springframework.stereotype.Component;

/**
 * {@code /language}: shows how the household is spoken to, and changes it. The language
 * of the chat program is offered once, and never taken without a word.
 */
@Component
class SpeechTalk {

	private static final String CHOSEN = "speech";

	private final Tongues tongues;

	private final Replies replies;

	private final Households households;

	private final CheckIns checkIns;

	private final Chats chats;

	private final Outbox outbox;

	SpeechTalk(Tongues tongues, Replies replies, Households households, CheckIns checkIns, Chats chats, Outbox outbox) {
		this.tongues = tongues;
		this.replies = replies;
		this.households = households;
		this.checkIns = checkIns;
		this.chats = chats;
		this.outbox = outbox;
	}

	/** How the people of a chat are spoken to; a newcomer, as chosen so far. */
	Speech speechOf(long chatId) {
		return this.households.speechIn(chatId)
			.or(() -> welcome(chatId).flatMap((open) -> Optional.ofNullable(open.remembered().get(CHOSEN)))
				.flatMap(this.tongues::of)
				.map(Tongue::speech))
			.orElse(Speech.usual());
	}

	void command(Turn turn, String words, Reply reply) {
		if (words.isEmpty()) {
			ask(reply);
		}
		else if (!changed(turn, words, reply)) {
			reply.say(Phrase.SPEECH_NOT_UNDERSTOOD,
					Map.of("languages", String.join(", ", this.tongues.all().stream().map(Tongue::name).toList())));
		}
	}

	private void ask(Reply reply) {
		Speech now = Speaking.now();
		List<String> choices = new ArrayList<>();
		this.tongues.all()
			.stream()
			.filter((tongue) -> !tongue.tag().equals(now.tag()))
			.map(Tongue::name)
			.forEach(choices::add);
		choices.add(this.replies.part((now.units() == Units.MILES) ? Part.IN_KILOMETRES : Part.IN_MILES));
		this.tongues.of(now.tag())
			.filter((tongue) -> tongue.vet() != null)
			.ifPresent((tongue) -> choices.add(this.replies.part(now.vet() ? Part.CLINIC : Part.VET)));
		reply.ask(Phrase.SPEECH, places(), choices);
	}

	/** Takes the answer, if how the household is spoken to was asked last. */
	boolean answered(Turn turn, Reply reply) {
		return askedLast(turn.chatId()) && changed(turn, turn.text(), reply);
	}

	private boolean askedLast(long chatId) {
		String last = this.outbox.lastText(chatId).orElse("");
		return last.equals(this.replies.say(Phrase.SPEECH, places()))
				|| this.tongues.all().stream().anyMatch((tongue) -> last.equals(offer(tongue)));
	}

	private boolean changed(Turn turn, String words, Reply reply) {
		Optional<Speech> wish = wish(words, turn.speech());
		wish.ifPresent((speech) -> {
			this.households.speak(turn.dog().household().id(), speech);
			Speaking.change(speech);
			reply.say(Phrase.SPEECH_CHANGED, places());
		});
		return wish.isPresent();
	}

	private Optional<Speech> wish(String words, Speech now) {
		Optional<Tongue> tongue = this.tongues.named(words);
		Speech inTongue = tongue.map((chosen) -> now.inLanguage(chosen.tag(), chosen.units())).orElse(now);
		Optional<Units> units = units(words);
		Optional<Boolean> vet = vet(words);
		Speech wish = inTongue.withUnits(units.orElse(inTongue.units())).saying(vet.orElse(now.vet()));
		boolean understood = tongue.isPresent() || units.isPresent() || vet.isPresent();
		return understood ? Optional.of(wish) : Optional.empty();
	}

	/** By the words of either language: 'miles', 'en millas', 'kilometres'. */
	private Optional<Units> units(String words) {
		if (says(words, Part.IN_MILES) || names(words, "miles", "mile")) {
			return Optional.of(Units.MILES);
		}
		boolean kilometres = says(words, Part.IN_KILOMETRES)
				|| names(words, "km", "kilometres", "kilometers", "kilometre");
		return kilometres ? Optional.of(Units.KILOMETRES) : Optional.empty();
	}

	private Optional<Boolean> vet(String words) {
		if (says(words, Part.VET) || names(words, "vet")) {
			return Optional.of(true);
		}
		return (says(words, Part.CLINIC) || names(words, "clinic")) ? Optional.of(false) : Optional.empty();
	}

	private boolean says(String words, Part part) {
		return words.toLowerCase(Locale.ROOT).contains(this.replies.part(part).toLowerCase(Locale.ROOT));
	}

	private static boolean names(String words, String... any) {
		return List.of(words.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))
			.stream()
			.anyMatch((word) -> List.of(any).contains(word));
	}

	/** Offers the language of the chat program, if it is another one. */
	void offer(long chatId, Reply reply) {
		this.chats.language(chatId)
			.flatMap(this.tongues::meantBy)
			.filter((tongue) -> !languageOf(tongue).equals(Speaking.now().language()))
			.ifPresent((tongue) -> {
				String here = this.tongues.of(Speaking.now().tag()).map(Tongue::name).orElse(Speaking.now().tag());
				reply.ask(offer(tongue), List.of(tongue.name(), here));
			});
	}

	private String offer(Tongue tongue) {
		return Speaking.as(tongue.speech(), () -> this.replies.say(Phrase.SPEECH_OFFER));
	}

	private static String languageOf(Tongue tongue) {
		return Locale.forLanguageTag(tongue.tag()).getLanguage();
	}

	/**
	 * A newcomer names a language and nothing else: the set-up goes on in it.
	 * @return true when the message was that
	 */
	boolean chosenByNewcomer(long chatId, String words, Reply reply) {
		Optional<CheckIn> open = welcome(chatId);
		Optional<Tongue> named = this.tongues.all()
			.stream()
			.filter((tongue) -> words.strip().equalsIgnoreCase(tongue.name())
					|| tongue.called().contains(words.strip().toLowerCase(Locale.ROOT)))
			.findFirst();
		if (open.isEmpty() || named.isEmpty()) {
			return false;
		}
		this.checkIns.remember(open.get().id(), CHOSEN, named.get().tag());
		Speaking.change(named.get().speech());
		String dog = open.get().remembered().getOrDefault("name", this.replies.part(Part.YOUR_DOG));
		this.checkIns.waiting(open.get().id(), Map.of("dog", dog)).ifPresent(reply::ask);
		return true;
	}

	private Optional<CheckIn> welcome(long chatId) {
		return this.checkIns.current(chatId).filter((open) -> open.conversation().equals(CheckIns.WELCOME));
	}

	private Map<String, String> places() {
		Speech now = Speaking.now();
		String name = this.tongues.of(now.tag()).map(Tongue::name).orElse(now.tag());
		return Map.of("language", name, "units", this.replies.word("units", now.units().code()));
	}

}
