package measuredwalk.pictures;

import java.util.ArrayList;
import java.util.List;

/** What the marks mean, in rows under the picture. */
final class Legend {

	/** Mean width of a letter as a share of the words' size, in Liberation Sans. */
	static final double LETTER = 0.5;

	/** Height of a row, and room for a mark, as shares of the words' size. */
	private static final double ROW = 1.5;

	private static final double SYMBOL = 1.8;

	private static final double GAP = 12;

	private final double width;

	private final double size;

	/** Where entries of a row may begin: everywhere, or at half of the width too. */
	private final boolean columns;

	private final List<Entry> entries = new ArrayList<>();

	Legend(double width) {
		this(width, Style.WORDS, false);
	}

	private Legend(double width, double size, boolean columns) {
		this.width = width;
		this.size = size;
		this.columns = columns;
	}

	/** With two entries a row, one below the other, in words of a size. */
	static Legend inTwoColumns(double width, double size) {
		return new Legend(width, size, true);
	}

	/** Draws a mark about a spot. */
	interface Symbol {

		void draw(Surface surface, double x, double y);

	}

	private record Entry(Symbol symbol, String words) {
	}

	private double widthOf(Entry entry) {
		return this.columns ? this.width / 2 : SYMBOL * this.size + entry.words().length() * this.size * LETTER + GAP;
	}

	Legend with(Symbol symbol, String words) {
		this.entries.add(new Entry(symbol, words));
		return this;
	}

	double height() {
		return place((entry, x, row) -> {
		}) * ROW * this.size + 6;
	}

	void draw(Surface surface, double top) {
		place((entry, x, row) -> {
			double y = top + (row + 0.5) * ROW * this.size;
			double room = SYMBOL * this.size;
			entry.symbol().draw(surface, x + room / 2 - 2, y);
			surface.words(new Spot(x + room, y + this.size * 0.36), entry.words(), this.size, Anchor.START, Style.INK);
		});
	}

	private interface Placed {

		void at(Entry entry, double x, int row);

	}

	private int place(Placed placed) {
		double x = 4;
		int row = 0;
		for (Entry entry : this.entries) {
			if (x > 4 && x + widthOf(entry) > this.width + (this.columns ? 4 : 0)) {
				x = 4;
				row++;
			}
			placed.at(entry, x, row);
			x += widthOf(entry);
		}
		return row + 1;
	}

}
