package measuredwalk.reading.benchmark;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;

import org.natty.Parser;
import com.microsoft.recognizers.text.Culture;
import com.microsoft.recognizers.text.ModelResult;
import com.microsoft.recognizers.text.datetime.DateTimeRecognizer;
import measuredwalk.reading.Tokeniser;
import measuredwalk.reading.quantity.Duration;
import measuredwalk.reading.quantity.Quantities;

/** Readers of durations to compare: seconds told by a text, in order. */
public enum DurationReader {

	/** This project's quantities. */
	MEASURED_WALK("this reader") {
		@Override
		List<Double> seconds(String text) {
			return Quantities.in(Tokeniser.tokens(text), NOON)
				.stream()
				.filter(Duration.class::isInstance)
				.map((quantity) -> ((Duration) quantity).seconds().value())
				.toList();
		}
	},
	/** Natty, which knows dates only: a duration is how far behind now its date is. */
	NATTY("Natty alone (dates)") {
		@Override
		List<Double> seconds(String text) {
			Date now = Date.from(NOON.toInstant(ZoneOffset.UTC));
			return new Parser(TimeZone.getTimeZone(ZoneOffset.UTC)).parse(text, now)
				.stream()
				.flatMap((group) -> group.getDates().stream())
				.map((date) -> Math.abs(date.getTime() - now.getTime()) / 1000.0)
				.toList();
		}
	},
	/** A general recogniser of dates, times and durations. */
	RECOGNIZERS_TEXT("Recognizers-Text (general)") {
		@Override
		List<Double> seconds(String text) {
			List<Double> seconds = new ArrayList<>();
			for (ModelResult result : DateTimeRecognizer.recognizeDateTime(text, Culture.English)) {
				if (result.typeName.endsWith("duration") && result.resolution != null) {
					addSeconds(seconds, result.resolution.get("values"));
				}
			}
			return seconds;
		}
	},
	/** The JDK's ISO form, with blanks taken out, for what the platform itself can do. */
	JAVA_TIME("java.time (ISO form)") {
		@Override
		List<Double> seconds(String text) {
			try {
				String iso = "PT" + text.replace(" ", "").toUpperCase(Locale.ROOT);
				return List.of((double) java.time.Duration.parse(iso).toSeconds());
			}
			catch (DateTimeParseException ex) {
				return List.of();
			}
		}
	};

	private static final LocalDateTime NOON = LocalDateTime.ofInstant(Instant.parse("2026-03-14T12:00:00Z"),
			ZoneOffset.UTC);

	private final String title;

	DurationReader(String title) {
		this.title = title;
	}

	/**
	 * Its name in reports.
	 * @return a few words
	 */
	public String title() {
		return this.title;
	}

	abstract List<Double> seconds(String text);

	private static void addSeconds(List<Double> seconds, Object values) {
		if (values instanceof List<?> list && !list.isEmpty() && list.get(0) instanceof Map<?, ?> first
				&& first.get("value") instanceof String value) {
			seconds.add(Double.valueOf(value));
		}
	}

}
