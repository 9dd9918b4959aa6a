package measuredwalk.messaging;

import java.util.Optional;

/**
 * Makes the files of one kind. A message keeps a file's name only, so what is made is
 * what is true by then, and the outbox holds no files.
 */
public interface DocumentSource {

	/**
	 * The kind of file: what stands before the first stroke of a file's name.
	 * @return a word such as {@code record}
	 */
	String kind();

	/**
	 * Makes a file. Called outside a transaction and perhaps several times for one
	 * message.
	 * @param name what stands behind the first stroke of the file's name
	 * @return the file, at most 50 million bytes, or empty when there is nothing to tell
	 * any more
	 */
	Optional<Document> document(String name);

}
