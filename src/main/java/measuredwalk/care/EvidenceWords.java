package measuredwalk.care;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import measuredwalk.conversations.Part;
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

	private final Figures figures;

	EvidenceWords(Suggestions suggestions, Replies replies, Figures figures) {
		this.figures = figures;
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
				Map.of("dog", dog.name(), "days", DAYS, "counts", joined(counts))));
	}

	private String joined(List<String> counts) {
		return counts.stream().reduce((one, other) -> this.replies.part(Part.AND_ON, one, other)).orElse("");
	}

	private String count(Evidence.WalksOfLength band) {
		if (Double.isInfinite(band.atMostMinutes())) {
			return this.replies.part(Part.WALKS_OVER, band.withSigns(), band.walks(),
					this.figures.minutes(band.overMinutes()));
		}
		return (band.overMinutes() == 0)
				? this.replies.part(Part.WALKS_UP_TO, band.withSigns(), band.walks(),
						this.figures.minutes(band.atMostMinutes()))
				: this.replies.part(Part.WALKS_BETWEEN, band.withSigns(), band.walks(),
						this.figures.minutes(band.overMinutes() + 1, band.atMostMinutes()));
	}

	private Optional<String> mornings(Dog dog, Evidence evidence) {
		Evidence.Mornings mornings = evidence.mornings();
		if (mornings.told() == 0) {
			return Optional.empty();
		}
		String share = this.replies.part(Part.MORNINGS, mornings.worse(), mornings.told());
		return Optional.of(this.replies.say(Phrase.EVIDENCE_MORNINGS, Map.of("dog", dog.name(), "share", share)));
	}

}
