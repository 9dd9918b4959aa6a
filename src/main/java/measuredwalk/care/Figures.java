package measuredwalk.care;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

import measuredwalk.conversations.Part;
import measuredwalk.conversations.Replies;
import measuredwalk.signs.Coded;
import measuredwalk.speech.Speaking;
import measuredwalk.speech.Units;
import org.springframework.stereotype.Component;

/**
 * Figures, days and lists as people say them, in the language of whoever is spoken to.
 */
@Component
class Figures {

	private static final double METRES_IN_KILOMETRE = 1000;

	/** By the international agreement of 1959. */
	private static final double METRES_IN_MILE = 1609.344;

	private static final double METRES_IN_YARD = 0.9144;

	/** Less than a quarter of a mile is told in yards, to the next ten. */
	private static final double SHORTEST_MILES = 0.25;

	private final Replies replies;

	Figures(Replies replies) {
		this.replies = replies;
	}

	String minutes(double minutes) {
		return this.replies.part(Part.MINUTES, number(minutes), rounded(minutes));
	}

	String minutes(double low, double high) {
		return (Math.round(low) == Math.round(high)) ? minutes(Math.rint(low))
				: this.replies.part(Part.RANGE, String.valueOf(Math.round(low)), minutes(Math.rint(high)));
	}

	String walks(int walks) {
		return this.replies.part(Part.WALKS, walks);
	}

	String distance(double metres) {
		if (Speaking.now().units() == Units.MILES) {
			return imperial(metres);
		}
		return (metres < METRES_IN_KILOMETRE) ? this.replies.part(Part.METRES, String.valueOf(Math.round(metres)))
				: this.replies.part(Part.KILOMETRES, number(metres / METRES_IN_KILOMETRE));
	}

	private String imperial(double metres) {
		double miles = metres / METRES_IN_MILE;
		return (miles < SHORTEST_MILES)
				? this.replies.part(Part.YARDS, String.valueOf(Math.round(metres / METRES_IN_YARD / 10) * 10))
				: this.replies.part(Part.MILES, number(miles), rounded(miles));
	}

	/** '2 walks of 20 minutes'. */
	String walksOf(int walks, double minutes) {
		return this.replies.part(Part.WALKS_OF, walks(walks), minutes(minutes));
	}

	/** 'today', or the date as the name of a day that is still to come. */
	String dayToCome(LocalDate date, LocalDate today) {
		return date.equals(today) ? this.replies.part(Part.TODAY) : date(Part.DATE_ALONE, date);
	}

	/** 'today', 'yesterday', or the day with its date. */
	String day(LocalDate date, LocalDate today) {
		if (date.equals(today)) {
			return this.replies.part(Part.TODAY);
		}
		if (date.equals(today.minusDays(1))) {
			return this.replies.part(Part.YESTERDAY);
		}
		return date(Part.DATE, date);
	}

	private String date(Part pattern, LocalDate date) {
		Locale locale = Speaking.now().locale();
		return this.replies.part(pattern, date.getDayOfWeek().getDisplayName(TextStyle.FULL, locale),
				String.valueOf(date.getDayOfMonth()), date.getMonth().getDisplayName(TextStyle.FULL, locale));
	}

	/** Days of every week: 'Saturdays and Sundays'. */
	String everyWeek(Collection<DayOfWeek> days) {
		return andEach(days.stream()
			.sorted()
			.map((day) -> this.replies.part(Coded.of(Part.class, day.name().toLowerCase(Locale.ROOT))))
			.toList());
	}

	/** 'a and b and c'. */
	String andEach(List<String> things) {
		return things.stream().reduce((one, other) -> this.replies.part(Part.AND, one, other)).orElse("");
	}

	/** 'a, b and c'. */
	String and(List<String> things) {
		return listed(things, Part.AND);
	}

	/** 'a, b or c'. */
	String or(List<String> things) {
		return listed(things, Part.OR);
	}

	private String listed(List<String> things, Part joint) {
		int last = things.size() - 1;
		return (last < 1) ? String.join("", things)
				: this.replies.part(joint, String.join(", ", things.subList(0, last)), things.get(last));
	}

	private static String number(double figure) {
		double rounded = rounded(figure);
		return (rounded == Math.rint(rounded)) ? String.valueOf((long) rounded)
				: String.format(Speaking.now().locale(), "%.1f", rounded);
	}

	private static double rounded(double figure) {
		return Math.round(figure * 10) / 10.0;
	}

}
