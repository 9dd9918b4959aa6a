package measuredwalk.pictures;

import java.util.ArrayList;
import java.util.List;

/** What the marks mean, in rows under the picture. */
final class Legend {

	private static final double ROW = 16;

	private static final double SYMBOL = 20;

	/** Mean width of a letter as a share of the words' size, in Liberation Sans. */
	private static final double LETTER = 0.5;

	private static final double GAP = 12;

	private final double width;

	private final List<Entry> entries = new ArrayList<>();

	Legend(double width) {
		this.width = width;
	}

	/** Draws a mark about a spot. */
	interface Symbol {

		void draw(Surface surface, double x, double y);

	}

	private record Entry(Symbol symbol, String words) {
		private double width() {
			return SYMBOL + this.words.length() * Style.WORDS * LETTER + GAP;
		}
	}

	Legend with(Symbol symbol, String words) {
		this.entries.add(new Entry(symbol, words));
		return this;
	}

	double height() {
		return place((entry, x, row) -> {
		}) * ROW + 6;
	}

	void draw(Surface surface, double top) {
		place((entry, x, row) -> {
			double y = top + row * ROW + ROW / 2;
			entry.symbol().draw(surface, x + SYMBOL / 2 - 2, y);
			surface.words(new Spot(x + SYMBOL, y + 4), entry.words(), Style.WORDS, Anchor.START, Style.INK);
		});
	}

	private interface Placed {

		void at(Entry entry, double x, int row);

	}

	private int place(Placed placed) {
		double x = 4;
		int row = 0;
		for (Entry entry : this.entries) {
			if (x > 4 && x + entry.width() > this.width) {
				x = 4;
				row++;
			}
			placed.at(entry, x, row);
			x += entry.width();
		}
		return row + 1;
	}

}
