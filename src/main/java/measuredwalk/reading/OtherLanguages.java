package measuredwalk.reading;

import java.util.Collection;
import java.util.List;
import java.util.function.Predicate;

import measuredwalk.reading.gloss.Gloss;
import measuredwalk.reading.gloss.Glossary;
import measuredwalk.reading.gloss.OwnWords;

/**
 * Reads messages of households that speak another language, and sees to it that an
 * emergency is seen in every language that the reader knows, whatever the household
 * speaks.
 */
final class OtherLanguages {

	/**
	 * Reads a message by the English rules.
	 */
	interface EnglishReader {

		Reading read(OwnerMessage message, boolean mustBeEnglish);

	}

	private record Tongue(String language, Glossary glossary, OwnWords own) {
	}

	private final EnglishReader english;

	private final List<Tongue> tongues;

	OtherLanguages(EnglishReader english, Predicate<String> isEnglish) {
		this.english = english;
		this.tongues = Glossary.languages().stream().map((language) -> tongue(language, isEnglish)).toList();
	}

	private static Tongue tongue(String language, Predicate<String> isEnglish) {
		Glossary glossary = Glossary.of(language, isEnglish);
		return new Tongue(language, glossary, new OwnWords(glossary));
	}

	String english(String text, String language, Collection<String> names) {
		return this.tongues.stream()
			.filter((tongue) -> tongue.language().equals(language))
			.findFirst()
			.map((tongue) -> tongue.glossary().gloss(text, names).text())
			.orElse(text);
	}

	Reading read(OwnerMessage message) {
		for (Tongue tongue : this.tongues) {
			if (tongue.language().equals(message.language())) {
				return inTongue(message, tongue);
			}
		}
		Reading reading = this.english.read(message, true);
		for (Tongue tongue : this.tongues) {
			if (!isUrgent(reading) && tongue.own().areIn(message.text())) {
				Reading glossed = glossed(message, tongue);
				reading = isUrgent(glossed) ? glossed : reading;
			}
		}
		return reading;
	}

	/** A household may write English all the same, or mix the two. */
	private Reading inTongue(OwnerMessage message, Tongue tongue) {
		Reading glossed = glossed(message, tongue);
		Reading english = isUrgent(glossed) ? glossed : this.english.read(message, true);
		boolean inEnglish = english.understood() && !tongue.own().areIn(message.text()) && tellsMore(english, glossed);
		return (inEnglish || isUrgent(english)) ? english : glossed;
	}

	/** 'my dog limped' in a household that speaks another language. */
	private static boolean tellsMore(Reading english, Reading glossed) {
		return english.signs().size() + english.walks().size() > glossed.signs().size() + glossed.walks().size();
	}

	private Reading glossed(OwnerMessage message, Tongue tongue) {
		Gloss gloss = tongue.glossary()
			.gloss(message.text(), (message.dogName() == null) ? List.of() : List.of(message.dogName()));
		return gloss.isUnderstood() ? this.english.read(message.withText(gloss.text()), false)
				: MessageReader.nothing();
	}

	private static boolean isUrgent(Reading reading) {
		return reading.level().compareTo(Level.SAME_DAY) >= 0;
	}

}
