package measuredwalk.reading.quantity;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import measuredwalk.reading.Token;
import org.jspecify.annotations.Nullable;

/** What every word may mean, from the lexicon files. */
final class Lexicon {

	private static final Lexicon STANDARD = new Lexicon();

	private static final Term FIGURES = Term.NONE.withNumeral(Numeral.FIGURES, 0);

	private final Map<String, Term> terms = new HashMap<>();

	private Lexicon() {
		LexiconFile.read("numbers.txt", this::number);
		LexiconFile.read("units.txt", this::unit);
		LexiconFile.read("cues.txt", this::cue);
	}

	/** The meaning of each token, with {@link Term#NONE} for words without any. */
	static Term[] termsOf(List<Token> tokens) {
		Term[] terms = new Term[tokens.size()];
		for (int at = 0; at < terms.length; at++) {
			terms[at] = STANDARD.termOf(tokens.get(at));
		}
		return terms;
	}

	/** The unit that a word names, or null. */
	static @Nullable Unit unitNamed(String word) {
		return STANDARD.terms.getOrDefault(word, Term.NONE).unit();
	}

	private Term termOf(Token token) {
		if (token.kind() == Token.Kind.NUMBER) {
			return FIGURES;
		}
		String word = token.word();
		Term term = this.terms.get(word);
		if (term != null) {
			return term;
		}
		if (word.endsWith("'") || word.endsWith("ish")) {
			int end = word.endsWith("'") ? word.length() - 1 : word.length() - 3;
			return this.terms.getOrDefault(word.substring(0, end), Term.NONE);
		}
		return partTerm(word);
	}

	/** 'nineteenths' are parts, as every plural of an ordinal. */
	private Term partTerm(String word) {
		Term one = word.endsWith("ths") ? this.terms.get(word.substring(0, word.length() - 1)) : null;
		return one != null && one.numeral() == Numeral.ORDINAL ? Term.NONE.withNumeral(Numeral.PART, one.value())
				: Term.NONE;
	}

	private void number(String[] line) {
		Numeral numeral = Numeral.valueOf(line[0].toUpperCase(Locale.ROOT));
		double value = Double.parseDouble(line[1]);
		for (String word : Arrays.asList(line).subList(2, line.length)) {
			this.terms.merge(word, Term.NONE.withNumeral(numeral, value),
					(old, more) -> old.withNumeral(numeral, value));
		}
	}

	private void unit(String[] line) {
		boolean ambiguous = line[3].equals("or");
		Unit unit = ambiguous ? unit(line, 0, unit(line, 4, null)) : unit(line, 0, null);
		for (String word : Arrays.asList(line).subList(ambiguous ? 7 : 3, line.length)) {
			this.terms.put(word, this.terms.getOrDefault(word, Term.NONE).withUnit(unit));
		}
	}

	private static Unit unit(String[] line, int from, @Nullable Unit other) {
		Dimension dimension = Dimension.valueOf(line[from].toUpperCase(Locale.ROOT));
		return new Unit(dimension, Double.parseDouble(line[from + 1]), line[from + 2], other);
	}

	private void cue(String[] line) {
		Cue cue = Cue.valueOf(line[0].toUpperCase(Locale.ROOT));
		int month = 0;
		for (String word : Arrays.asList(line).subList(1, line.length)) {
			month += cue == Cue.MONTH && startsMonth(word) ? 1 : 0;
			this.terms.put(word, this.terms.getOrDefault(word, Term.NONE).withCue(cue, month));
		}
	}

	/** In the line of months each begins with its short form of three letters. */
	private static boolean startsMonth(String word) {
		return word.length() == 3;
	}

}
