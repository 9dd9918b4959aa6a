package measuredwalk.reading;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;

import measuredwalk.reading.amount.AmountReader;
import measuredwalk.reading.amount.Amounts;
import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.context.Context;
import measuredwalk.reading.context.ContextReader;
import measuredwalk.reading.level.ConceptScreen;
import measuredwalk.reading.level.Findings;
import measuredwalk.reading.level.LevelRule;
import measuredwalk.reading.level.LevelRules;
import measuredwalk.reading.level.OrdinaryFindings;
import measuredwalk.reading.level.UrgentWording;
import measuredwalk.reading.level.WordsOfPlans;
import measuredwalk.reading.load.LoadReader;
import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Lexicon;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.observation.EmergencyScreen;
import measuredwalk.reading.observation.Observation;
import measuredwalk.reading.observation.OnsetPlacer;
import measuredwalk.reading.observation.SignReader;
import measuredwalk.reading.words.Language;
import measuredwalk.reading.words.WordReader;
import measuredwalk.reading.words.Words;
import measuredwalk.signs.Overall;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import org.jspecify.annotations.Nullable;

/** Reads owners' words. Safe for use by many threads. */
public final class MessageReader {

	private static final int MOST_CHAT_WORDS = 4;

	private static @Nullable MessageReader standard;

	private final Lexicon lexicon;

	private final WordReader wordReader;

	private final Language language;

	private final EmergencyScreen screen;

	private final ConceptScreen concepts;

	private final UrgentWording wording;

	private final LoadReader loads = new LoadReader();

	private final OtherLanguages others;

	private MessageReader(Lexicon lexicon) {
		this.lexicon = lexicon;
		this.wordReader = new WordReader(lexicon);
		this.language = new Language(this.wordReader);
		this.screen = new EmergencyScreen(lexicon.rules());
		this.concepts = new ConceptScreen(lexicon);
		this.wording = UrgentWording.standard();
		this.others = new OtherLanguages(this::readEnglish, this.wordReader::knows);
	}

	/**
	 * The reader with the lexicons that are packed in the jar. It is made when it is
	 * first asked for, and everybody shares it.
	 * @return the reader
	 * @throws IllegalStateException when a lexicon file is wrong; the message names the
	 * file, the line and the fix
	 */
	public static synchronized MessageReader standard() {
		if (standard == null) {
			standard = new MessageReader(Lexicon.standard());
		}
		return standard;
	}

	/**
	 * Reads one message. Never throws on any text.
	 * @param message the message
	 * @return what its text supports
	 */
	public Reading read(OwnerMessage message) {
		List<OwnerMessage> parts = LongMessage.parts(message);
		return (parts.size() == 1) ? readPart(message)
				: LongMessage.joined(parts.stream().map(this::readPart).toList());
	}

	/**
	 * A text in the English that its rules know, so that what is not read as a message,
	 * such as the wish behind a command, can be looked for in one language.
	 * @param text what was typed
	 * @param language the two letters of the language that the household speaks
	 * @param names names of dogs, which are kept
	 * @return the text itself when it is English already
	 */
	public String english(String text, String language, Collection<String> names) {
		return this.others.english(text, language, names);
	}

	private Reading readPart(OwnerMessage message) {
		return this.others.read(message);
	}

	/** Reads what is English, or has been made so. */
	private Reading readEnglish(OwnerMessage message, boolean mustBeEnglish) {
		Words words = this.wordReader.read(message.text(), message.dogName());
		Annotation annotation = Annotation.of(words, this.lexicon);
		if ((mustBeEnglish && !this.language.isEnglish(words, message.text(), message.dogName()))
				|| isOnlyChat(annotation, message)) {
			return nothing();
		}
		ContextReader contexts = new ContextReader(annotation);
		List<Observation> observations = SignReader.read(annotation, contexts, screened(annotation));
		Amounts amounts = AmountReader.read(annotation, message.question(), message.now(), observations);
		observations = OnsetPlacer.placed(observations, amounts, annotation);
		Overall overall = OverallReader.read(annotation, contexts, observations,
				amounts.walks().stream().anyMatch((walk) -> walk.relative() != null));
		Reading reading = reading(message, annotation, observations, amounts, overall);
		boolean yesterday = reading.walks().stream().anyMatch((walk) -> walk.date() != null);
		return reading.withLoads(this.loads.read(message, annotation, contexts, amounts.walkWords(), yesterday));
	}

	private List<Mention> screened(Annotation annotation) {
		return Stream.concat(this.screen.mentions(annotation).stream(), this.concepts.mentions(annotation).stream())
			.toList();
	}

	/** 'ok', 'later', 'thanks' out of the blue. */
	private static boolean isOnlyChat(Annotation annotation, OwnerMessage message) {
		Words words = annotation.words();
		if (words.size() == 0 || words.size() > MOST_CHAT_WORDS
				|| (message.question() != Question.ANY && isOk(words))) {
			return false;
		}
		boolean[] chat = new boolean[words.size()];
		annotation.mentions(Category.CHAT).forEach((mention) -> Arrays.fill(chat, mention.from(), mention.to(), true));
		for (boolean each : chat) {
			if (!each) {
				return false;
			}
		}
		return true;
	}

	private static boolean isOk(Words words) {
		return words.is(0, "ok");
	}

	/**
	 * The context of a part of a text, as a clinical finding in a sentence.
	 * @param text the sentence
	 * @param start offset of the part's first character
	 * @param end offset behind its last character
	 * @return its context
	 */
	public Context context(String text, int start, int end) {
		Words words = this.wordReader.read(text, null);
		int from = 0;
		int to = words.size();
		for (int at = 0; at < words.size(); at++) {
			Token token = words.tokens().get(words.token(at));
			from = (token.end() <= start) ? at + 1 : from;
			to = (token.start() < end) ? at + 1 : to;
		}
		ContextReader contexts = new ContextReader(Annotation.of(words, this.lexicon));
		int last = Math.max(1, Math.min(to, words.size()));
		return contexts.of(Math.min(from, last - 1), last);
	}

	private Reading reading(OwnerMessage message, Annotation annotation, List<Observation> observations,
			Amounts amounts, @Nullable Overall overall) {
		Correction correction = CorrectionReader.read(annotation, amounts);
		List<Sign> signs = SignMerger.merged(observations);
		if (signs.isEmpty() && correction != null && correction.side() != null && correction.limb() != null) {
			signs.add(lameness(correction));
		}
		Findings findings = Findings.of(observations, annotation, medications(message, annotation), overall,
				amounts.stiffMinutes());
		List<LevelRule> rules = withWording(LevelRules.fitting(findings), annotation, message,
				() -> OrdinaryFindings.of(signs, overall, !amounts.walks().isEmpty()));
		Level level = rules.isEmpty() ? Level.NONE : rules.get(0).level();
		Doubts doubts = new Doubts(amounts.walks(), signs, observations);
		boolean told = !amounts.walks().isEmpty() || !signs.isEmpty() || amounts.noWalk();
		return new Reading(Plausible.walks(amounts.walks(), annotation, message.now()), signs, amounts.stiffMinutes(),
				overall, level, rules.stream().map(LevelRule::reason).toList(), true, doubts.paths(), doubts.askBack(),
				correction, told ? null : AnswerReader.read(annotation), amounts.noWalk());
	}

	/** The second net only raises a level, and only when no rule sees anything urgent. */
	private List<LevelRule> withWording(List<LevelRule> rules, Annotation annotation, OwnerMessage message,
			Supplier<OrdinaryFindings> ordinary) {
		if (!rules.isEmpty() && rules.get(0).level().compareTo(Level.SAME_DAY) >= 0) {
			return rules;
		}
		if (WordsOfPlans.only(annotation.words(), message.dogName())) {
			return rules;
		}
		LevelRule wording = this.wording.rule(annotation, message.dogName(), ordinary.get());
		return (wording == null) ? rules : Stream.concat(Stream.of(wording), rules.stream()).toList();
	}

	/** A leg that is put right without naming a sign is the lame one. */
	private static Sign lameness(Correction correction) {
		return new Sign(SignKind.LAMENESS, true, null, correction.side(), correction.limb(), null, null);
	}

	private static Set<String> medications(OwnerMessage message, Annotation annotation) {
		Set<String> kinds = new HashSet<>(message.medications());
		annotation.mentions(Category.MEDICINE).forEach((mention) -> kinds.add(mention.value()));
		return kinds;
	}

	static Reading nothing() {
		return new Reading(List.of(), List.of(), null, null, Level.NONE, List.of(), false, List.of(), null, null, null,
				false);
	}

}
