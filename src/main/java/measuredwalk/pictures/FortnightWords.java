package measuredwalk.pictures;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ResourceBundle;

import measuredwalk.speech.Speaking;

/**
 * The words on an owner's picture and those that say the same, in the language of whoever
 * is spoken to.
 */
final class FortnightWords {

	private static final String WORDS = "measuredwalk.pictures.fortnight";

	private FortnightWords() {
	}

	/**
	 * Words by their key, with figures or names put in.
	 * @param places what stands for {@code {0}}, {@code {1}} and so on
	 */
	static String of(String key, Object... places) {
		String words = ResourceBundle
			.getBundle(WORDS, Speaking.now().locale(),
					ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES))
			.getString(key);
		for (int i = 0; i < places.length; i++) {
			words = words.replace("{" + i + "}", String.valueOf(places[i]));
		}
		return words;
	}

	static String day(LocalDate date) {
		return date(date, "EEE d MMM");
	}

	/** The first letter of the weekday. */
	static String weekday(LocalDate date) {
		return date(date, "EEEEE");
	}

	static String dayAndMonth(LocalDate date) {
		return date(date, "d MMM");
	}

	private static String date(LocalDate date, String pattern) {
		return DateTimeFormatter.ofPattern(pattern, Speaking.now().locale()).format(date);
	}

	static String morning(PictureDay.Morning morning) {
		return of("morning." + morning.name());
	}

}
