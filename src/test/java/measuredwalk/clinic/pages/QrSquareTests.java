package measuredwalk.clinic.pages;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;

class QrSquareTests {

	private static final int SCALE = 6;

	private static final Pattern SIZE = Pattern.compile("viewBox=\"0 0 (\\d+) (\\d+)\"");

	private static final Pattern DOT = Pattern.compile("M(\\d+) (\\d+)h1v1h-1z");

	@ParameterizedTest
	@ValueSource(strings = { "https://t.me/MeasuredWalkTestBot?start=ABCDEFGHJK", "x",
			"https://example.org/a/rather/long/address/with/many/parts?and=a&query=that&goes=on&and=on&for=quite&a=while" })
	void aPhoneReadsTheLinkThatWasDrawn(String link) throws ReaderException {
		String svg = QrSquare.of(link);
		Matcher size = SIZE.matcher(svg);
		assertThat(size.find()).isTrue();
		int side = Integer.parseInt(size.group(1)) * SCALE;
		int[] pixels = new int[side * side];
		java.util.Arrays.fill(pixels, 0xffffff);
		DOT.matcher(svg)
			.results()
			.forEach((dot) -> fill(pixels, side, Integer.parseInt(dot.group(1)), Integer.parseInt(dot.group(2))));
		var bitmap = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(side, side, pixels)));
		assertThat(new QRCodeReader().decode(bitmap, Map.of(DecodeHintType.TRY_HARDER, true)).getText())
			.isEqualTo(link);
	}

	private static void fill(int[] pixels, int side, int column, int row) {
		for (int y = row * SCALE; y < (row + 1) * SCALE; y++) {
			java.util.Arrays.fill(pixels, y * side + column * SCALE, y * side + (column + 1) * SCALE, 0);
		}
	}

}
