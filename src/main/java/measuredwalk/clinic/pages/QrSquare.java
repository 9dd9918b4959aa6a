package measuredwalk.clinic.pages;

import java.util.Map;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;

/** Draws a QR code for a link, to be scanned from paper or screen. */
final class QrSquare {

	private static final int QUIET_ZONE = 2;

	private QrSquare() {
	}

	static String of(String link) {
		BitMatrix dots = dots(link);
		StringBuilder path = new StringBuilder();
		for (int y = 0; y < dots.getHeight(); y++) {
			for (int x = 0; x < dots.getWidth(); x++) {
				if (dots.get(x, y)) {
					path.append('M').append(x).append(' ').append(y).append("h1v1h-1z");
				}
			}
		}
		return "<svg viewBox=\"0 0 " + dots.getWidth() + " " + dots.getHeight()
				+ "\" role=\"img\" aria-label=\"QR code of the link\" shape-rendering=\"crispEdges\"><path d=\"" + path
				+ "\"/></svg>";
	}

	private static BitMatrix dots(String link) {
		try {
			return new QRCodeWriter().encode(link, BarcodeFormat.QR_CODE, 0, 0,
					Map.of(EncodeHintType.MARGIN, QUIET_ZONE, EncodeHintType.ERROR_CORRECTION, ErrorCorrectionLevel.M));
		}
		catch (WriterException ex) {
			throw new IllegalArgumentException("A link of " + link.length() + " characters does not fit a QR code.",
					ex);
		}
	}

}
