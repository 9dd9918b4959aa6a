package measuredwalk.command;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.function.Function;

import measuredwalk.signs.Coded;
import measuredwalk.signs.Overall;
import measuredwalk.signs.Sign;
import measuredwalk.tolerance.ToleranceEvent;
import measuredwalk.tolerance.WalkPlan;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** A line of the {@code replay} tool's input. */
final class ReplayLine {

	private static final double MOST_MINUTES = 240;

	private final JsonNode json;

	ReplayLine(JsonNode json) {
		if (!json.isObject()) {
			throw new IllegalArgumentException("a line must be one JSON object");
		}
		this.json = json;
	}

	boolean isSuggest() {
		return required("event").equals("suggest");
	}

	String dog() {
		return required("dog");
	}

	LocalDate date() {
		String date = required("date");
		return read("date", date, LocalDate::parse);
	}

	/**
	 * The line as an event.
	 * @param before the dog's plan until now, or null when the dog is new
	 * @return the event
	 */
	ToleranceEvent event(@Nullable WalkPlan before) {
		return switch (required("event")) {
			case "dog" -> new ToleranceEvent.DogEnrolled(date(), plan(null), number("weightKg"), number("ageYears"),
					!this.json.path("fullyGrown").isBoolean() || this.json.path("fullyGrown").booleanValue(),
					optional("surgeryDate", LocalDate::parse));
			case "walk" -> walk();
			case "morning" -> new ToleranceEvent.MorningSeen(date(), signs(), number("stiffMinutes"),
					optional("overall", (code) -> Coded.of(Overall.class, code)), late());
			case "medication" -> new ToleranceEvent.MedicationChanged(date(), change(), text("kind", "unknown"));
			case "plan" -> new ToleranceEvent.PlanChanged(date(), plan(before));
			default -> throw new IllegalArgumentException("'event' must be dog, suggest, walk, morning, medication"
					+ " or plan, not '" + required("event") + "'");
		};
	}

	private ToleranceEvent walk() {
		double minutes = requiredNumber("minutes");
		return new ToleranceEvent.WalkTaken(date(), optional("time", LocalTime::parse), minutes,
				number("minutesLow", minutes), number("minutesHigh", minutes), number("distanceMetres"), signs(),
				late());
	}

	private ToleranceEvent.MedicationChanged.Change change() {
		return Coded.of(ToleranceEvent.MedicationChanged.Change.class, text("change", "changed"));
	}

	private boolean late() {
		return this.json.path("late").isBoolean() && this.json.path("late").booleanValue();
	}

	/** What a new plan does not say stays as it was, within the new minutes. */
	private WalkPlan plan(@Nullable WalkPlan before) {
		double minutes = requiredNumber("planMinutes");
		double walks = number("walksPerDay", (before != null) ? before.walksPerDay() : 2);
		double min = number("minMinutes", (before != null) ? Math.min(before.minMinutes(), minutes) : 0);
		double max = number("maxMinutes", (before != null) ? Math.max(before.maxMinutes(), minutes)
				: Math.max(minutes, Math.min(MOST_MINUTES, 2 * minutes)));
		return new WalkPlan(minutes, (int) Math.rint(walks), min, max);
	}

	private List<Sign> signs() {
		return this.json.path("signs").valueStream().map(ReplaySign::read).toList();
	}

	private String required(String field) {
		JsonNode node = this.json.path(field);
		if (!node.isString()) {
			throw new IllegalArgumentException("'" + field + "' is required and must be text");
		}
		return node.stringValue();
	}

	private double requiredNumber(String field) {
		Double number = number(field);
		if (number == null) {
			throw new IllegalArgumentException("'" + field + "' is required and must be a number");
		}
		return number;
	}

	private String text(String field, String otherwise) {
		return this.json.path(field).isString() ? required(field) : otherwise;
	}

	private @Nullable Double number(String field) {
		JsonNode node = this.json.path(field);
		if (node.isMissingNode() || node.isNull()) {
			return null;
		}
		if (!node.isNumber()) {
			throw new IllegalArgumentException("'" + field + "' must be a number");
		}
		return node.doubleValue();
	}

	private double number(String field, double otherwise) {
		Double number = number(field);
		return (number != null) ? number : otherwise;
	}

	private <T> @Nullable T optional(String field, Function<String, T> reading) {
		JsonNode node = this.json.path(field);
		return (node.isMissingNode() || node.isNull()) ? null : read(field, required(field), reading);
	}

	private static <T> T read(String field, String text, Function<String, T> reading) {
		try {
			return reading.apply(text);
		}
		catch (DateTimeException ex) {
			throw new IllegalArgumentException("'" + field + "' must be in ISO 8601, not '" + text + "'", ex);
		}
	}

}
