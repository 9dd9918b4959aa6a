package measuredwalk.journal;

import java.util.UUID;

import org.springframework.stereotype.Component;

/** Writes past entries without telling anybody, so that many days are there at once. */
@Component
public class QuietJournal {

	private final WalkEntryRows walks;

	private final MorningEntryRows mornings;

	QuietJournal(WalkEntryRows walks, MorningEntryRows mornings) {
		this.walks = walks;
		this.mornings = mornings;
	}

	public void write(UUID dogId, WalkFacts facts, Teller teller, Said said) {
		this.walks.save(new WalkEntryEntity(dogId, facts, new Telling(teller, said)));
	}

	public void write(UUID dogId, MorningFacts facts, Teller teller, Said said) {
		this.mornings.save(new MorningEntryEntity(dogId, facts, new Telling(teller, said)));
	}

}
