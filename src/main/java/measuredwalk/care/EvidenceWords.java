package measuredwalk.care;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.household.Dog;
import measuredwalk.suggestions.Suggestions;
import measuredwalk.tolerance.Evidence;
import org.springframework.stereotype.Component;

/** What the journal of the last days shows, in sentences; never more than it shows. */
@Component
class EvidenceWords {

	private static final int DAYS = 14;

	private final Suggestions suggestions;

	private final Replies replies;

	EvidenceWords(Suggestions suggestions, Replies replies) {
		this.suggestions = suggestions;
		this.replies = replies;
	}

	List<String> sentences(Dog dog) {
		Evidence evidence = this.suggestions.evidence(dog, DAYS);
		return Stream.concat(walks(dog, evidence).stream(), mornings(dog, evidence).stream()).toList();
	}

	private Optional<String> walks(Dog dog, Evidence evidence) {
		List<String> counts = new ArrayList<>();
		List<Evidence.WalksOfLength> bands = evidence.walks();
		for (int band = bands.size() - 1; band >= 0; band--) {
			counts.add(count(bands.get(band)));
		}
		return counts.isEmpty() ? Optional.empty() : Optional.of(this.replies.say(Phrase.EVIDENCE_WALKS,
				Map.of("dog", dog.name(), "days", DAYS, "counts", String.join(" and on ", counts))));
	}

	private String count(Evidence.WalksOfLength band) {
		String share = (band.withSigns() == 0) ? "none of " + band.walks() : band.withSigns() + " of " + band.walks();
		String walks = share + ((band.walks() == 1) ? " walk" : " walks");
		if (Double.isInfinite(band.atMostMinutes())) {
			return walks + " over " + Figures.minutes(band.overMinutes());
		}
		return walks + ((band.overMinutes() == 0) ? " up to " + Figures.minutes(band.atMostMinutes())
				: " of " + Figures.minutes(band.overMinutes() + 1, band.atMostMinutes()));
	}

	private Optional<String> mornings(Dog dog, Evidence evidence) {
		Evidence.Mornings mornings = evidence.mornings();
		if (mornings.told() == 0) {
			return Optional.empty();
		}
		String share = ((mornings.worse() == 0) ? "none" : String.valueOf(mornings.worse())) + " of " + mornings.told()
				+ ((mornings.told() == 1) ? " morning" : " mornings");
		return Optional.of(this.replies.say(Phrase.EVIDENCE_MORNINGS, Map.of("dog", dog.name(), "share", share)));
	}

}
