package measuredwalk.reading.words;

import java.util.Arrays;
import java.util.List;
import java.util.Set;

import measuredwalk.reading.Token;
import measuredwalk.reading.lexicon.Lexicon;
import org.jspecify.annotations.Nullable;

/** Makes {@link Words} of tokens. */
final class WordsBuilder {

	private static final int[] NOTHING = {};

	/** Words that are written short with a full stop, which ends no sentence. */
	private static final Set<String> ABBREVIATED = Set.of("approx", "abt", "vs", "dr", "st", "e.g", "i.e");

	private final Lexicon lexicon;

	private final WordList english;

	private final @Nullable String dogName;

	String[] forms;

	int[][] symbols;

	int[] tokenOf;

	char[] markBefore;

	int size;

	WordsBuilder(Lexicon lexicon, WordList english, @Nullable String dogName, int tokens) {
		this.lexicon = lexicon;
		this.english = english;
		this.dogName = dogName;
		this.forms = new String[tokens + 8];
		this.symbols = new int[tokens + 8][];
		this.tokenOf = new int[tokens + 8];
		this.markBefore = new char[tokens + 8];
	}

	Words build(List<Token> tokens) {
		for (int index = 0; index < tokens.size(); index++) {
			Token token = tokens.get(index);
			switch (token.kind()) {
				case WORD -> addWord(token.word(), index);
				case NUMBER -> add(token.word(), index, this.lexicon.symbolsOfNumber(token.word()));
				case SYMBOL -> addSymbol(token.word(), index);
				case PUNCTUATION -> mark(markOf(tokens, index));
				case BREAK -> mark('\n');
			}
		}
		return new Words(tokens, this);
	}

	private void addSymbol(String sign, int index) {
		if (sign.equals("&") || sign.equals("+")) {
			addPlain("and", index);
		}
		else if (sign.equals("@")) {
			addPlain("at", index);
		}
		else {
			mark('~');
			String picture = sign.substring(0, Character.charCount(sign.codePointAt(0)));
			add(picture, index, this.lexicon.symbolsOf(picture));
			mark('~');
		}
	}

	private static char markOf(List<Token> tokens, int index) {
		Token token = tokens.get(index);
		char mark = token.word().charAt(0);
		boolean joinsWords = token.joined() && index + 1 < tokens.size() && tokens.get(index + 1).joined();
		if (mark == '-' && joinsWords) {
			return 0;
		}
		if (mark == '.' && index + 1 < tokens.size() && tokens.get(index + 1).is(".")) {
			return '-';
		}
		if (mark == '.' && index > 0 && tokens.get(index - 1).is(".")) {
			return '-';
		}
		if (mark == '.' && index > 0 && ABBREVIATED.contains(tokens.get(index - 1).word())) {
			return 0;
		}
		return mark;
	}

	private void mark(char mark) {
		if (Words.strength(mark) > Words.strength(this.markBefore[this.size])) {
			this.markBefore[this.size] = mark;
		}
	}

	private void addWord(String word, int index) {
		if (this.dogName != null && isDogName(word)) {
			add(word, index, this.lexicon.dogSymbol());
			return;
		}
		int apostrophe = word.indexOf('\'');
		if (apostrophe <= 0) {
			addPlain(word, index);
			return;
		}
		if (word.endsWith("n't")) {
			addPlain(Contraction.verbOf(word), index);
			addPlain("not", index);
			return;
		}
		if (word.startsWith("t'")) {
			addPlain(word.substring(2), index);
			return;
		}
		addPlain(word.substring(0, apostrophe), index);
		String verb = Contraction.verbAfter(word, apostrophe);
		if (verb != null) {
			addPlain(verb, index);
		}
	}

	private boolean isDogName(String word) {
		String name = this.dogName;
		return name != null && word.startsWith(name)
				&& (word.length() == name.length() || word.equals(name + "'s") || word.equals(name + "s"));
	}

	private void addPlain(String word, int index) {
		boolean name = this.dogName != null && this.english.isName(word);
		add(word, index, name ? this.lexicon.symbolsOfName(word) : this.lexicon.symbolsOf(word));
	}

	private void add(String form, int index, int[] known) {
		if (this.size + 2 >= this.forms.length) {
			grow();
		}
		this.forms[this.size] = form;
		this.symbols[this.size] = (known.length == 0) ? NOTHING : known;
		this.tokenOf[this.size] = index;
		this.size++;
	}

	private void grow() {
		int length = this.forms.length * 2;
		this.forms = Arrays.copyOf(this.forms, length);
		this.symbols = Arrays.copyOf(this.symbols, length);
		this.tokenOf = Arrays.copyOf(this.tokenOf, length);
		this.markBefore = Arrays.copyOf(this.markBefore, length);
	}

}
