package measuredwalk.conversations;

import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

import measuredwalk.reading.Question;
import org.jspecify.annotations.Nullable;

/**
 * A running conversation.
 *
 * @param id its number
 * @param chatId the chat that it is held in
 * @param dogId the dog that it is about, or null before there is one
 * @param conversation the name of its script
 * @param reads what kind of question its answers are read as
 * @param aboutDate the day that it asks about, in the household's zone
 * @param asked what the question that waits for an answer would settle; empty when none
 * waits
 * @param askedAgain true when that question was asked a second time in other words
 * @param settled what is known already
 * @param remembered short facts to keep until it ends
 * @param entryId the journal entry that its answers add to, or null
 */
public record CheckIn(UUID id, long chatId, @Nullable UUID dogId, String conversation, Question reads,
		LocalDate aboutDate, Set<Slot> asked, boolean askedAgain, Set<Slot> settled, Map<String, String> remembered,
		@Nullable UUID entryId) {

	/**
	 * The same question put about another dog, of which nothing is known yet.
	 * @param anotherDogId the dog
	 * @return the conversation as it would be about that dog
	 */
	public CheckIn asIfAbout(UUID anotherDogId) {
		return new CheckIn(this.id, this.chatId, anotherDogId, this.conversation, this.reads, this.aboutDate,
				this.asked, this.askedAgain, Set.of(), Map.of(), null);
	}

	public CheckIn {
		asked = Set.copyOf(asked);
		settled = Set.copyOf(settled);
		remembered = Map.copyOf(remembered);
	}

}
