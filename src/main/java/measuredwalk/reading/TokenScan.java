package measuredwalk.reading;

import java.util.ArrayList;
import java.util.List;

/** One pass over the characters of one text. */
final class TokenScan {

	private final String text;

	private final List<Token> tokens;

	private int position;

	private int lastEnd = -1;

	TokenScan(String text) {
		this.text = text;
		this.tokens = new ArrayList<>(text.length() / 4 + 4);
	}

	List<Token> tokens() {
		while (this.position < this.text.length()) {
			next();
		}
		return this.tokens;
	}

	private void next() {
		int code = this.text.codePointAt(this.position);
		if (Characters.isLineEnd(code)) {
			lineEnds();
		}
		else if (Characters.isBlank(code)) {
			this.position += Character.charCount(code);
		}
		else if (Character.isDigit(code) || FigureScan.isLeadingPoint(this.text, this.position)) {
			number();
		}
		else if (Character.isLetter(code)) {
			word();
		}
		else if (Characters.isFractionSign(code)) {
			add(Token.Kind.NUMBER, String.valueOf((char) code), this.position + 1);
		}
		else {
			mark(code);
		}
	}

	private void lineEnds() {
		int end = this.position + 1;
		while (end < this.text.length()
				&& (Characters.isLineEnd(this.text.charAt(end)) || Characters.isBlank(this.text.charAt(end)))) {
			end++;
		}
		add(Token.Kind.BREAK, "\n", end);
	}

	private void number() {
		int end = FigureScan.end(this.text, this.position);
		add(Token.Kind.NUMBER, Characters.figures(this.text, this.position, end), end);
	}

	private void word() {
		int end = WordScan.end(this.text, this.position, this.lastEnd == this.position && afterFigures());
		add(Token.Kind.WORD, Contractions.restored(Characters.lowerCase(this.text, this.position, end)), end);
	}

	private boolean afterFigures() {
		return !this.tokens.isEmpty() && this.tokens.get(this.tokens.size() - 1).kind() == Token.Kind.NUMBER;
	}

	private void mark(int code) {
		if (Characters.isHyphen(code) && WordScan.insideCompound(this.text, this.position)) {
			this.position++;
			this.lastEnd = this.lastEnd == this.position - 1 ? this.position : -1;
			return;
		}
		if (Characters.isPunctuation(code)) {
			add(Token.Kind.PUNCTUATION, Characters.straight(code), this.position + Character.charCount(code));
		}
		else {
			add(Token.Kind.SYMBOL, Characters.straight(code), SymbolScan.end(this.text, this.position));
		}
	}

	private void add(Token.Kind kind, String word, int end) {
		this.tokens.add(new Token(word, this.position, end, kind, this.lastEnd == this.position));
		this.position = end;
		this.lastEnd = end;
	}

}
