package measuredwalk.care;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Finds dogs in a text, by name or together: 'Tarn', 'Tarn and Moss', 'both', 'the dogs'.
 */
final class DogNames {

	/** 'Both legs' and 'both walks' are not of two dogs. */
	private static final String TOGETHER = "\\b(?:they |we |them )?(?:both(?: of them| the dogs| dogs)?|all of them|all three"
			+ "|the two of them|the three of them|the pair of them|(?:the|my|our) (?:dogs|pair|two|boys|girls|lads))\\b"
			+ "(?! (?:of )?(?:his |her |their |the )?(?:back|front|hind|fore|rear|legs|paws|feet|hips|knees|elbows"
			+ "|shoulders|ears|eyes|sides|ends|walks|times|days|mornings|evenings|nights|ways|occasions)\\b)";

	/** With a small letter, 'the bramble' is a hedge. */
	private static final Pattern A_THING = Pattern.compile("\\b(?:the|a|an|some) $");

	private static final Pattern JOINED = Pattern.compile("\\s*(?:,\\s*and|and|n|&|\\+|/)\\s*",
			Pattern.CASE_INSENSITIVE);

	private static final Pattern COMMA = Pattern.compile("\\s*,\\s*");

	private static final Pattern ONLY_FILLERS = Pattern.compile(
			"(?i)(?:\\b(?:it was|its|it is|was|for|about|the|please|dog|that was|just|only|yes|i mean)\\b|[^\\p{L}\\d])*");

	private final List<String> names;

	private final Pattern mention;

	DogNames(List<String> names) {
		this.names = List.copyOf(names);
		String any = names.stream()
			.sorted(Comparator.comparingInt(String::length).reversed())
			.map(Pattern::quote)
			.collect(Collectors.joining("|"));
		this.mention = Pattern.compile(
				"(?<![\\p{L}\\d])(?:(" + any + ")(?:['\u2019]?s)?(?![\\p{L}\\d])|" + TOGETHER + ")",
				Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
	}

	/**
	 * Dogs that stand in one place of a text.
	 *
	 * @param start offset of the first character
	 * @param end offset behind the last character
	 * @param dogs their places in the list of names
	 */
	record Mention(int start, int end, Set<Integer> dogs) {
	}

	/** Dogs that are named side by side are one mention. */
	List<Mention> in(String text) {
		List<Mention> found = new ArrayList<>();
		this.mention.matcher(text).results().filter((match) -> !isThing(text, match)).forEach((match) -> {
			Mention next = new Mention(match.start(), match.end(), dogs(match));
			Mention last = found.isEmpty() ? null : found.get(found.size() - 1);
			if (last != null && sideBySide(text, last, next)) {
				found.set(found.size() - 1, joined(last, next));
			}
			else {
				found.add(next);
			}
		});
		return found;
	}

	/** The dogs of a text that holds nothing but dogs, as an answer to which one does. */
	Set<Integer> only(String text) {
		List<Mention> found = in(text);
		StringBuilder rest = new StringBuilder(text);
		for (int index = found.size() - 1; index >= 0; index--) {
			rest.delete(found.get(index).start(), found.get(index).end());
		}
		Set<Integer> dogs = new TreeSet<>();
		if (ONLY_FILLERS.matcher(rest).matches()) {
			found.forEach((each) -> dogs.addAll(each.dogs()));
		}
		return dogs;
	}

	private static boolean isThing(String text, MatchResult match) {
		boolean smallName = match.group(1) != null && Character.isLowerCase(text.codePointAt(match.start()));
		return smallName && A_THING.matcher(text.substring(0, match.start()).toLowerCase(Locale.ROOT)).find();
	}

	private Set<Integer> dogs(MatchResult match) {
		String name = match.group(1);
		return IntStream.range(0, this.names.size())
			.filter((dog) -> name == null || this.names.get(dog).equalsIgnoreCase(name))
			.boxed()
			.collect(Collectors.toCollection(TreeSet::new));
	}

	/** 'Tarn, Moss: 20' is of both; '20 for Tarn, Moss 15' is not. */
	private static boolean sideBySide(String text, Mention last, Mention next) {
		String between = text.substring(last.end(), next.start());
		boolean begins = text.substring(0, last.start()).matches("(?s)(?:.*[.!?;\\n])?\\s*");
		return JOINED.matcher(between).matches() || (begins && COMMA.matcher(between).matches());
	}

	private static Mention joined(Mention one, Mention other) {
		Set<Integer> dogs = new TreeSet<>(one.dogs());
		dogs.addAll(other.dogs());
		return new Mention(one.start(), other.end(), dogs);
	}

}
