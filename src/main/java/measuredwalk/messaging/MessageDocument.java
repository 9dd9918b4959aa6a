package measuredwalk.messaging;

/**
 * A file that goes with a message. Only its name is kept; it is made when it is sent.
 *
 * @param name what is to be made, at most 100 characters, such as
 * {@code record/walks.csv}
 * @param instead what is said when it cannot be made or sent, at most 400 characters
 */
public record MessageDocument(String name, String instead) {
}
