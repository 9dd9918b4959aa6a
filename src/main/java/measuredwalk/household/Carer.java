package measuredwalk.household;

import java.util.UUID;

/**
 * A person who looks after the household's dogs and writes in a chat.
 *
 * @param id the carer's number
 * @param householdId the household
 * @param chatId the chat that the carer writes in
 * @param name what the others call this person
 * @param silenced true after {@code /stop}: no messages are sent until {@code /start}
 */
public record Carer(UUID id, UUID householdId, long chatId, String name, boolean silenced) {
}
