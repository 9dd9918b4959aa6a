package measuredwalk.care;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What a message says of each dog that it names, clause by clause: in 'both did 20, Tarn
 * was stiff' the first clause is of both and the second of one. What comes before any
 * name is of all that are named; a clause without a name goes on about the dogs of the
 * clause before it.
 */
final class DogWords {

	private static final Pattern CLAUSE_END = Pattern.compile("[.!?;:\\n](?=\\s|$)|,(?!\\d)|[()]| - "
			+ "|\\b(?=(?i:and|but|while|whereas|though|apart from|except)\\b)|&");

	/** A dog after one of these is not the one that is told of: 'played with Moss'. */
	private static final Pattern BESIDE = Pattern.compile(
			"(?i)(?:^|.*\\b(?:with|than|like|as|after|from|at|by|to|past|of|for|behind|before|met|saw|chased|and))\\s*$");

	private static final Pattern FIGURE_FOR = Pattern.compile("(?i)(?<![\\d.])\\d[\\d.]*[^\\d]{0,20}\\bfor\\s*$");

	private static final String OTHER = "the other dog";

	private final List<String> names;

	private final DogNames finder;

	DogWords(List<String> names) {
		this.names = List.copyOf(names);
		this.finder = new DogNames(names);
	}

	/**
	 * The words that are about each named dog.
	 * @param text the message
	 * @return by the dog's place in the list of names; empty when no dog is named
	 */
	Map<Integer, String> of(String text) {
		List<DogNames.Mention> mentions = this.finder.in(text);
		Set<Integer> named = new TreeSet<>();
		mentions.forEach((mention) -> named.addAll(mention.dogs()));
		Map<Integer, StringBuilder> words = new TreeMap<>();
		named.forEach((dog) -> words.put(dog, new StringBuilder()));
		Set<Integer> about = named;
		for (Clause clause : clauses(text, mentions)) {
			about = clause.mentions().isEmpty() ? about : clause.dogs();
			about.forEach((dog) -> append(words.get(dog), said(text, clause, dog)));
		}
		return words.entrySet()
			.stream()
			.collect(Collectors.toMap(Map.Entry::getKey, (each) -> each.getValue().toString().strip(),
					(one, other) -> one, TreeMap::new));
	}

	/** What was left out between two clauses may have been the gap between them. */
	private static void append(StringBuilder words, String more) {
		boolean gap = words.length() == 0 || more.isEmpty() || Character.isWhitespace(words.charAt(words.length() - 1))
				|| !Character.isLetterOrDigit(more.charAt(0));
		words.append(gap ? "" : " ").append(more);
	}

	private List<Clause> clauses(String text, List<DogNames.Mention> mentions) {
		Set<Integer> ends = new TreeSet<>();
		CLAUSE_END.matcher(text)
			.results()
			.map(MatchResult::end)
			.filter((end) -> mentions.stream().noneMatch((each) -> each.start() < end && end < each.end()))
			.forEach(ends::add);
		for (int index = 1; index < mentions.size(); index++) {
			int before = mentions.get(index - 1).end();
			beginning(text, before, mentions.get(index).start()).ifPresent(ends::add);
		}
		ends.add(text.length());
		List<Clause> clauses = new ArrayList<>();
		int start = 0;
		for (int end : ends) {
			int from = start;
			clauses.add(new Clause(from, end,
					mentions.stream().filter((each) -> each.start() >= from && each.start() < end).toList()));
			start = end;
		}
		return clauses;
	}

	/** Where the words about the next dog begin when no mark parts them. */
	private static Optional<Integer> beginning(String text, int from, int mention) {
		String between = text.substring(from, mention);
		MatchResult figure = FIGURE_FOR.matcher(between).results().findFirst().orElse(null);
		if (figure != null) {
			return Optional.of(from + figure.start());
		}
		return BESIDE.matcher(between.strip()).matches() ? Optional.empty() : Optional.of(mention);
	}

	/** Together they are read as this dog; another one by itself is another dog. */
	private String said(String text, Clause clause, int dog) {
		StringBuilder said = new StringBuilder();
		int at = clause.start();
		for (DogNames.Mention mention : clause.mentions()) {
			String name = mention.dogs().contains(dog) ? this.names.get(dog) : OTHER;
			said.append(text, at, mention.start()).append(name);
			at = mention.end();
		}
		return said.append(text, Math.min(at, clause.end()), clause.end()).toString();
	}

	private record Clause(int start, int end, List<DogNames.Mention> mentions) {

		Set<Integer> dogs() {
			Set<Integer> dogs = new TreeSet<>();
			this.mentions.forEach((mention) -> dogs.addAll(mention.dogs()));
			return dogs;
		}

	}

}
