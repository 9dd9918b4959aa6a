package measuredwalk.messaging;

import java.util.Optional;

/**
 * Draws the pictures of one kind. A message keeps a picture's name only, so what is drawn
 * is what is true by then, and the outbox holds no pictures.
 */
public interface PictureSource {

	/**
	 * The kind of picture: what stands before the first stroke of a picture's name.
	 * @return a word such as {@code signs}
	 */
	String kind();

	/**
	 * Draws a picture. Called outside a transaction and perhaps several times for one
	 * message.
	 * @param name what stands behind the first stroke of the picture's name
	 * @return the bytes of a PNG file whose sides together measure at most 10000 pixels,
	 * or empty when there is nothing to show any more
	 */
	Optional<byte[]> png(String name);

}
