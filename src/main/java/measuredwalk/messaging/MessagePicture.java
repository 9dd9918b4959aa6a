package measuredwalk.messaging;

/**
 * A picture that goes with a message. Only its name is kept; it is drawn when it is
 * shown.
 *
 * @param name what is to be shown, at most 100 characters, such as {@code signs/slowing}
 * @param inWords what it shows, at most 400 characters, for those who cannot see it
 */
public record MessagePicture(String name, String inWords) {
}
