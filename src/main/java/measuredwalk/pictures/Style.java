package measuredwalk.pictures;

import java.awt.Color;

/**
 * The one look of all pictures. Teal and rust differ in lightness too, and every kind of
 * mark has a shape or a pattern of its own, so that nothing hangs on colour.
 */
final class Style {

	static final Color PAPER = new Color(0xfffdf8);

	static final Color INK = new Color(0x22282b);

	static final Color FAINT = new Color(0x566065);

	static final Color GRID = new Color(0xe3ddd0);

	static final Color BAND = new Color(0xcfdcd5);

	static final Color MEDIAN = new Color(0x5c7d70);

	static final Color SUGGESTED = new Color(0x23565a);

	static final Color WALKED = new Color(0x6f978a);

	static final Color SIGN = new Color(0x8a3b12);

	/** Size of all small words; 11 units are 11 pixels on a phone. */
	static final double WORDS = 11;

	static final double TITLE = 13;

	/**
	 * Size of words on an owner's picture, which is shown at about four fifths of its
	 * size in a chat.
	 */
	static final double OWNER_WORDS = 15;

	static final double OWNER_TITLE = 20;

	private Style() {
	}

}
