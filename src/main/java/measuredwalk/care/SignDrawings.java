package measuredwalk.care;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.regex.Pattern;

import measuredwalk.messaging.PictureSource;
import org.springframework.stereotype.Component;

/** The line drawings of the lessons; each is made from the SVG file beside it. */
@Component
class SignDrawings implements PictureSource {

	static final String KIND = "signs";

	private static final Pattern NAME = Pattern.compile("[a-z-]+");

	@Override
	public String kind() {
		return KIND;
	}

	@Override
	public Optional<byte[]> png(String name) {
		if (!NAME.matcher(name).matches()) {
			return Optional.empty();
		}
		try (InputStream file = SignDrawings.class.getResourceAsStream("/static/signs/" + name + ".png")) {
			return (file != null) ? Optional.of(file.readAllBytes()) : Optional.empty();
		}
		catch (IOException ex) {
			throw new UncheckedIOException("The drawing '" + name + "' cannot be read.", ex);
		}
	}

}
