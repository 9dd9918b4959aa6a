package measuredwalk.command;

import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.List;

import measuredwalk.reading.quantity.Age;
import measuredwalk.reading.quantity.Amount;
import measuredwalk.reading.quantity.BareNumber;
import measuredwalk.reading.quantity.ClockTime;
import measuredwalk.reading.quantity.Count;
import measuredwalk.reading.quantity.DayPart;
import measuredwalk.reading.quantity.Distance;
import measuredwalk.reading.quantity.Duration;
import measuredwalk.reading.quantity.Money;
import measuredwalk.reading.quantity.Ordinal;
import measuredwalk.reading.quantity.OtherMeasure;
import measuredwalk.reading.quantity.Percentage;
import measuredwalk.reading.quantity.Quantity;
import measuredwalk.reading.quantity.Scale;
import measuredwalk.reading.quantity.Temperature;
import measuredwalk.reading.quantity.TimeRange;
import measuredwalk.reading.quantity.WholeDay;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Puts quantities into the lists of one answer. */
final class ReadQuantitiesAnswer {

	private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss");

	private final ArrayNode durations;

	private final ArrayNode distances;

	private final ArrayNode numbers;

	private final ArrayNode times;

	private final ArrayNode timeRanges;

	private final ArrayNode temperatures;

	ReadQuantitiesAnswer(ObjectNode answer) {
		this.durations = answer.putArray("durations");
		this.distances = answer.putArray("distances");
		this.numbers = answer.putArray("numbers");
		this.times = answer.putArray("times");
		this.timeRanges = answer.putArray("timeRanges");
		this.temperatures = answer.putArray("temperatures");
	}

	void add(List<Quantity> quantities) {
		quantities.forEach(this::add);
	}

	private void add(Quantity quantity) {
		if (quantity instanceof Duration duration) {
			repeat(this.durations, "seconds", duration.seconds(), duration.times());
		}
		else if (quantity instanceof Distance distance) {
			repeat(this.distances, "metres", distance.metres(), distance.times());
		}
		else if (quantity instanceof Temperature temperature) {
			Scale scale = temperature.scale();
			put(this.temperatures, "value", temperature.degrees()).put("unit", scale == null ? null : scale.letter());
		}
		else {
			addTimeOrNumber(quantity);
		}
	}

	private void addTimeOrNumber(Quantity quantity) {
		if (quantity instanceof ClockTime time) {
			this.times.addObject().put("time", TIME.format(time.said())).put("meant", TIME.format(time.time()));
		}
		else if (quantity instanceof TimeRange range) {
			put(range.from().said(), range.till().said(), range.seconds());
		}
		else if (quantity instanceof WholeDay whole) {
			this.durations.addObject().put("seconds", whole.seconds());
		}
		else if (quantity instanceof DayPart part) {
			put(part.start(), part.end(), part.end().toSecondOfDay() - part.start().toSecondOfDay());
		}
		else {
			addNumber(quantity);
		}
	}

	/** What has no list of its own is told as the number that it is. */
	private void addNumber(Quantity quantity) {
		if (quantity instanceof BareNumber number) {
			repeat(this.numbers, "value", number.amount(), number.times());
		}
		else if (quantity instanceof Ordinal ordinal && ordinal.place().isRange()) {
			put(this.numbers, "value", ordinal.place());
		}
		else if (quantity instanceof Money money) {
			put(this.numbers, "value", money.amount());
		}
		else if (quantity instanceof Age age) {
			put(this.numbers, "value", age.years());
		}
		else if (quantity instanceof Percentage percentage) {
			put(this.numbers, "value", percentage.percent());
		}
		else if (quantity instanceof Count count) {
			put(this.numbers, "value", count.times());
		}
		else if (quantity instanceof OtherMeasure measure) {
			put(this.numbers, "value", measure.amount());
		}
	}

	private void put(LocalTime start, LocalTime end, long seconds) {
		this.timeRanges.addObject()
			.put("start", TIME.format(start))
			.put("end", TIME.format(end))
			.put("seconds", seconds);
	}

	private static void repeat(ArrayNode list, String unit, Amount amount, int times) {
		for (int time = 0; time < times; time++) {
			put(list, unit, amount);
		}
	}

	private static ObjectNode put(ArrayNode list, String unit, Amount amount) {
		ObjectNode entry = list.addObject().put(unit, amount.value());
		if (amount.isRange() || amount.exact()) {
			entry.put("low", amount.low()).put("high", amount.high());
		}
		if (amount.approximate()) {
			entry.put("approximate", true);
		}
		return entry;
	}

}
