package measuredwalk.messaging;

/**
 * A file.
 *
 * @param fileName what it is called
 * @param mediaType its type, such as {@code text/csv}
 * @param content its bytes
 */
public record Document(String fileName, String mediaType, byte[] content) {
}
