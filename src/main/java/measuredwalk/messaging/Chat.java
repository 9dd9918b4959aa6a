package measuredwalk.messaging;

/**
 * A chat with a person or a group.
 *
 * @param id its number here
 * @param channel the channel's name
 * @param address its address on that channel
 */
public record Chat(long id, String channel, String address) {
}
