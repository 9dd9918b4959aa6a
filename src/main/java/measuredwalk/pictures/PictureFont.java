package measuredwalk.pictures;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * The font of painted words: the free Liberation Sans that PDFBox brings along, so that a
 * picture is the same on every machine, whatever fonts are installed there.
 */
final class PictureFont {

	private static final String RESOURCE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

	private static final Font FONT = load();

	private PictureFont() {
	}

	static Font ofSize(double size) {
		return FONT.deriveFont((float) size);
	}

	private static Font load() {
		try (InputStream font = PictureFont.class.getResourceAsStream(RESOURCE)) {
			if (font == null) {
				throw new IllegalStateException("The font " + RESOURCE + " is missing; PDFBox must be packed along.");
			}
			return Font.createFont(Font.TRUETYPE_FONT, font);
		}
		catch (IOException ex) {
			throw new UncheckedIOException("The font " + RESOURCE + " cannot be read.", ex);
		}
		catch (FontFormatException ex) {
			throw new IllegalStateException("The font " + RESOURCE + " is broken.", ex);
		}
	}

}
