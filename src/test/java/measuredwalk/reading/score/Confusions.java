package measuredwalk.reading.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import measuredwalk.reading.score.Scorecard.Field;
import org.jspecify.annotations.Nullable;

/**
 * How often something was read for something else. Values of a vocabulary are told by
 * name; amounts and times only as right, other or missing.
 */
public final class Confusions {

	private static final String NOTHING = "nothing";

	private static final Set<Field> OF_A_VOCABULARY = EnumSet.of(Field.SIGNS, Field.SEVERITY, Field.SIDE, Field.LIMB,
			Field.WHEN, Field.OVERALL, Field.LEVEL, Field.URGENT, Field.NOT_UNDERSTOOD);

	private final Map<Confusion, Integer> counts = new HashMap<>();

	/**
	 * One thing that was read for another.
	 *
	 * @param field the field
	 * @param told what the label says
	 * @param read what was read
	 */
	public record Confusion(Field field, String told, String read) {
	}

	/**
	 * A confusion with how often it came.
	 *
	 * @param confusion what for what
	 * @param times how often, at least once
	 */
	public record Counted(Confusion confusion, int times) {
	}

	void add(Field field, @Nullable Object told, @Nullable Object read) {
		boolean both = !isNothing(told) && !isNothing(read);
		count(field, name(field, told, "a value"), name(field, read, both ? "another value" : "a value"));
	}

	/**
	 * A sign read with the wrong presence is one confusion, not one miss and one
	 * invention.
	 */
	void addSigns(List<String> missed, List<String> invented) {
		List<String> rest = new ArrayList<>(invented);
		for (String told : missed) {
			String turned = told.startsWith("no ") ? told.substring(3) : "no " + told;
			count(Field.SIGNS, told, rest.remove(turned) ? turned : NOTHING);
		}
		rest.forEach((read) -> count(Field.SIGNS, NOTHING, read));
	}

	private void count(Field field, String told, String read) {
		this.counts.merge(new Confusion(field, told, read), 1, Integer::sum);
	}

	private static boolean isNothing(@Nullable Object value) {
		return value == null || (value instanceof List<?> list && list.isEmpty());
	}

	private static String name(Field field, @Nullable Object value, String some) {
		if (value == null || isNothing(value)) {
			return NOTHING;
		}
		return OF_A_VOCABULARY.contains(field) ? value.toString() : some;
	}

	/**
	 * The most frequent confusions of all fields.
	 * @param most how many, at most
	 * @return the worst first
	 */
	public List<Counted> worst(int most) {
		return this.counts.entrySet()
			.stream()
			.map((entry) -> new Counted(entry.getKey(), entry.getValue()))
			.sorted(Comparator.comparing((Counted counted) -> -counted.times())
				.thenComparing((counted) -> counted.confusion().toString()))
			.limit(most)
			.toList();
	}

}
