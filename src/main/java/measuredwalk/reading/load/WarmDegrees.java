package measuredwalk.reading.load;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import measuredwalk.reading.quantity.Quantities;
import measuredwalk.reading.quantity.Quantity;
import measuredwalk.reading.quantity.Scale;
import measuredwalk.reading.quantity.Temperature;
import measuredwalk.reading.words.Words;

/**
 * Temperatures of a warm day: from 20 degrees Celsius (Hall 2022, Vet Sci 9:231: caution
 * from 16 to 20), and under 38, which is a dog's own.
 */
final class WarmDegrees {

	private static final double WARM = 20;

	private static final double OF_A_DOG = 38;

	/** Only where one of these stands need temperatures be looked for. */
	private static final Set<String> UNITS = Set.of("degrees", "degree", "deg", "c", "f", "celsius", "centigrade",
			"fahrenheit", "°", "°c", "°f", "ºc");

	private WarmDegrees() {
	}

	/** The words at which a warm temperature stands. */
	static List<Integer> in(Words words, LocalDateTime now) {
		List<Integer> places = new ArrayList<>();
		if (words.tokens().stream().noneMatch((token) -> UNITS.contains(token.word()))) {
			return places;
		}
		for (Quantity quantity : Quantities.in(words.tokens(), now)) {
			if (quantity instanceof Temperature temperature && isWarm(temperature)) {
				int at = words.firstFrom(temperature.span().firstToken());
				if (at < words.size()) {
					places.add(at);
				}
			}
		}
		return places;
	}

	private static boolean isWarm(Temperature temperature) {
		double degrees = temperature.degrees().value();
		boolean fahrenheit = temperature.scale() == Scale.FAHRENHEIT
				|| (temperature.scale() == null && degrees > 2 * WARM);
		double celsius = fahrenheit ? (degrees - 32) / 1.8 : degrees;
		return celsius >= WARM && celsius < OF_A_DOG;
	}

}
