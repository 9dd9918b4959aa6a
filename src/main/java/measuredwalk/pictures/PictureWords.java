package measuredwalk.pictures;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Properties;

/** The words on pictures and those that say the same. */
final class PictureWords {

	private static final String FILE = "words.properties";

	private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.UK);

	private static final Properties WORDS = load();

	private PictureWords() {
	}

	private static Properties load() {
		Properties words = new Properties();
		try (InputStream file = PictureWords.class.getResourceAsStream(FILE)) {
			words.load(new InputStreamReader(java.util.Objects.requireNonNull(file, FILE), StandardCharsets.UTF_8));
		}
		catch (IOException ex) {
			throw new UncheckedIOException("The words of the pictures cannot be read.", ex);
		}
		return words;
	}

	/**
	 * Words by their key, with figures or names put in.
	 * @param places what stands for {@code {0}}, {@code {1}} and so on
	 */
	static String of(String key, Object... places) {
		String words = WORDS.getProperty(key);
		if (words == null) {
			throw new IllegalStateException(FILE + " has no words for '" + key + "'");
		}
		for (int i = 0; i < places.length; i++) {
			words = words.replace("{" + i + "}", String.valueOf(places[i]));
		}
		return words;
	}

	static String figure(double figure) {
		return String.valueOf(Math.round(figure));
	}

	static String day(LocalDate date) {
		return DAY.format(date);
	}

	static String morning(PictureDay.Morning morning) {
		return of("morning." + morning.name());
	}

}
