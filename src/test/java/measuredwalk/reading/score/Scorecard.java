package measuredwalk.reading.score;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import measuredwalk.reading.Level;
import measuredwalk.reading.MessageReader;
import measuredwalk.reading.Reading;
import measuredwalk.reading.WalkTold;
import measuredwalk.signs.Coded;
import measuredwalk.signs.Sign;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** Compares readings with labels, field by field. */
public final class Scorecard {

	/** What is compared. */
	public enum Field {

		WALK_MINUTES, FIRST_WALK_MINUTES, DISTANCE, START, RELATIVE, SIGNS, DENIED_SIGNS, SEVERITY, SIDE, LIMB, WHEN,
		ONSET, STIFF_MINUTES, OVERALL, URGENT, NOT_UNDERSTOOD, LEVEL

	}

	private final Map<Field, Tally> tallies = new EnumMap<>(Field.class);

	private final Confusions confusions = new Confusions();

	private final List<String> failures = new ArrayList<>();

	private final List<String> current = new ArrayList<>();

	private Scorecard() {
		for (Field field : Field.values()) {
			this.tallies.put(field, new Tally());
		}
	}

	/**
	 * Scores a reader.
	 * @param reader the reader
	 * @param messages labelled messages
	 * @return the scores
	 */
	public static Scorecard of(MessageReader reader, List<LabelledMessage> messages) {
		Scorecard card = new Scorecard();
		for (LabelledMessage message : messages) {
			card.compare(message, reader.read(message.message()));
		}
		return card;
	}

	/**
	 * The counts of a field.
	 * @param field the field
	 * @return its counts
	 */
	public Tally tally(Field field) {
		return Objects.requireNonNull(this.tallies.get(field));
	}

	/**
	 * One line for each message with a fault: its id, its text and what was wrong.
	 * @return the faults
	 */
	public List<String> failures() {
		return this.failures;
	}

	/**
	 * What was read for what, without any message's text.
	 * @return the confusions of all fields
	 */
	public Confusions confusions() {
		return this.confusions;
	}

	/**
	 * The scores as lines of text.
	 * @return one line for each field
	 */
	public List<String> lines() {
		return this.tallies.entrySet()
			.stream()
			.map((entry) -> String.format(java.util.Locale.ROOT, "%-20s %s", entry.getKey(), entry.getValue()))
			.toList();
	}

	private void compare(LabelledMessage message, Reading reading) {
		this.current.clear();
		JsonNode expected = message.expected();
		boolean urgent = reading.level().compareTo(Level.SAME_DAY) >= 0;
		if (expected.has("understood")) {
			compareFacts(expected, reading);
			flag(Field.URGENT, expected.path("urgent").asBoolean(), urgent);
		}
		else {
			String level = expected.path("level").asString("");
			flag(Field.URGENT, level.equals("emergency") || level.equals("same-day"), urgent);
			compareNames(expected, reading.signs());
		}
		if (expected.path("level").isString()) {
			value(Field.LEVEL, text(expected.get("level")), reading.level().code());
		}
		if (!this.current.isEmpty()) {
			this.failures.add(message.id() + " [" + message.message().question().code() + "] "
					+ message.message().text() + " => " + String.join("; ", this.current));
		}
	}

	private void compareFacts(JsonNode expected, Reading reading) {
		compareWalks(expected.path("walks"), reading.walks());
		compareSigns(expected.path("signs"), reading.signs());
		nullable(Field.STIFF_MINUTES, number(expected.get("stiffMinutes")), reading.stiffMinutes(), 1);
		value(Field.OVERALL, text(expected.get("overall")),
				(reading.overall() == null) ? null : reading.overall().code());
		flag(Field.NOT_UNDERSTOOD, !expected.path("understood").asBoolean(), !reading.understood());
	}

	/** Where only the names of the main signs are labelled, others are no fault. */
	private void compareNames(JsonNode expected, List<Sign> signs) {
		for (JsonNode name : expected.path("signs")) {
			boolean found = signs.stream()
				.anyMatch((sign) -> sign.present() && sign.kind().code().equals(name.asString()));
			outcome(Field.SIGNS, found, name.asString());
		}
	}

	private void compareWalks(JsonNode gold, List<WalkTold> walks) {
		List<Double> told = new ArrayList<>();
		gold.forEach((walk) -> addIfThere(told, number(walk.get("minutes"))));
		List<Double> read = new ArrayList<>();
		walks.forEach((walk) -> addIfThere(read, walk.minutes()));
		boolean same = told.size() == read.size();
		for (int index = 0; same && index < told.size(); index++) {
			same = Math.abs(told.get(index) - read.get(index)) <= 1;
		}
		listed(Field.WALK_MINUTES, told, read, same);
		listed(Field.FIRST_WALK_MINUTES, told, read,
				!told.isEmpty() && !read.isEmpty() && Math.abs(told.get(0) - read.get(0)) <= 1);
		for (int index = 0; index < Math.max(gold.size(), walks.size()); index++) {
			compareWalk(gold.path(index), (index < walks.size()) ? walks.get(index) : null);
		}
	}

	private static void addIfThere(List<Double> list, @Nullable Double value) {
		if (value != null) {
			list.add(value);
		}
	}

	private void listed(Field field, List<Double> told, List<Double> read, boolean same) {
		if (told.isEmpty() && read.isEmpty()) {
			return;
		}
		if (!told.isEmpty() && same) {
			tally(field).right();
			return;
		}
		if (!told.isEmpty()) {
			tally(field).missed();
		}
		if (!read.isEmpty()) {
			tally(field).invented();
		}
		note(field, told, read);
	}

	private void compareWalk(JsonNode gold, @Nullable WalkTold walk) {
		Double metres = number(gold.get("distanceMetres"));
		nullable(Field.DISTANCE, metres, (walk == null) ? null : walk.distanceMetres(),
				(metres == null) ? 0 : metres * 0.02);
		value(Field.START, text(gold.get("start")),
				(walk == null || walk.start() == null) ? null : walk.start().toString());
		value(Field.RELATIVE, relative(gold.get("relative")),
				(walk == null || walk.relative() == null) ? null : walk.relative().of().code() + " "
						+ rounded(walk.relative().factor()) + " " + rounded(walk.relative().offsetMinutes()));
	}

	private static @Nullable String relative(@Nullable JsonNode gold) {
		if (gold == null || gold.isNull()) {
			return null;
		}
		return gold.path("of").asString("") + " " + rounded(number(gold.get("factor"))) + " "
				+ rounded(number(gold.get("offsetMinutes")));
	}

	private static String rounded(@Nullable Double value) {
		return (value == null) ? "-" : String.format(java.util.Locale.ROOT, "%.1f", value);
	}

	private void compareSigns(JsonNode gold, List<Sign> signs) {
		List<Sign> rest = new ArrayList<>(signs);
		List<String> missed = new ArrayList<>();
		for (JsonNode label : gold) {
			boolean present = label.path("present").asBoolean();
			String code = label.path("sign").asString("");
			Sign match = rest.stream()
				.filter((sign) -> sign.kind().code().equals(code) && sign.present() == present)
				.findFirst()
				.orElse(null);
			rest.remove(match);
			outcome(Field.SIGNS, match != null, present ? code : "!" + code);
			if (match == null) {
				missed.add((present ? "" : "no ") + code);
			}
			if (!present) {
				outcome(Field.DENIED_SIGNS, match != null, null);
			}
			if (match != null && present) {
				compareSlots(label, match);
			}
		}
		this.confusions.addSigns(missed,
				rest.stream().map((sign) -> (sign.present() ? "" : "no ") + sign.kind().code()).toList());
		for (Sign sign : rest) {
			tally(Field.SIGNS).invented();
			if (!sign.present()) {
				tally(Field.DENIED_SIGNS).invented();
			}
			this.current.add("invented " + (sign.present() ? "" : "!") + sign.kind().code());
		}
	}

	private void outcome(Field field, boolean right, @Nullable String what) {
		if (right) {
			tally(field).right();
			return;
		}
		tally(field).missed();
		if (what != null) {
			this.current.add("missed " + what);
		}
	}

	private void compareSlots(JsonNode label, Sign sign) {
		value(Field.SEVERITY, text(label.get("severity")), code(sign.severity()));
		value(Field.SIDE, text(label.get("side")), code(sign.side()));
		value(Field.LIMB, text(label.get("limb")), code(sign.limb()));
		value(Field.WHEN, text(label.get("when")), code(sign.when()));
		nullable(Field.ONSET, number(label.get("onsetMinute")), sign.onsetMinute(), 1);
	}

	private static @Nullable String code(@Nullable Coded word) {
		return (word == null) ? null : word.code();
	}

	private void nullable(Field field, @Nullable Double gold, @Nullable Double read, double within) {
		boolean right = gold != null && read != null && Math.abs(gold - read) <= within;
		value(field, (gold == null) ? null : gold.toString(),
				right ? String.valueOf(gold) : (read == null) ? null : read.toString());
	}

	private void value(Field field, @Nullable String gold, @Nullable String read) {
		if (Objects.equals(gold, read)) {
			if (gold != null) {
				tally(field).right();
			}
			return;
		}
		if (gold != null) {
			tally(field).missed();
		}
		if (read != null) {
			tally(field).invented();
		}
		note(field, gold, read);
	}

	private void flag(Field field, boolean gold, boolean read) {
		value(field, gold ? "yes" : null, read ? "yes" : null);
	}

	private void note(Field field, @Nullable Object gold, @Nullable Object read) {
		this.current.add(field + " " + gold + " but read " + read);
		this.confusions.add(field, gold, read);
	}

	private static @Nullable Double number(@Nullable JsonNode node) {
		return (node == null || !node.isNumber()) ? null : node.asDouble();
	}

	private static @Nullable String text(@Nullable JsonNode node) {
		return (node == null || !node.isString()) ? null : node.asString();
	}

}
