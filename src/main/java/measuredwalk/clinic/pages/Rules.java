package measuredwalk.clinic.pages;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import measuredwalk.escalation.ClinicSetting;
import measuredwalk.escalation.ClinicSettings;
import measuredwalk.escalation.EscalationRule;
import measuredwalk.escalation.EscalationRules;
import measuredwalk.reading.MessageRule;
import measuredwalk.tolerance.DosingSetting;
import org.springframework.stereotype.Component;

/** All clinical rules, each with what it rests on and until when that was checked. */
@Component
class Rules {

	private final List<EscalationRules> escalation;

	private final ClinicSettings settings;

	private final DosingWords words;

	private final Clock clock;

	Rules(List<EscalationRules> escalation, ClinicSettings settings, DosingWords words, Clock clock) {
		this.escalation = List.copyOf(escalation);
		this.settings = settings;
		this.words = words;
		this.clock = clock;
	}

	/** Today at the clinic. */
	LocalDate today() {
		return this.clock.instant().atZone(this.settings.zone()).toLocalDate();
	}

	List<RuleSection> all() {
		LocalDate today = today();
		return List.of(
				new RuleSection("messages", "What a message is judged by",
						"The highest level that fits counts. What a dog's record adds may only raise it.",
						MessageRule.all().stream().map((rule) -> message(rule, today)).toList()),
				new RuleSection("course", "What a course and an unseen alert are judged by",
						"A rule about the course raises a review; each spell is raised once, and again when it is worse.",
						this.escalation.stream()
							.flatMap((rules) -> rules.all().stream())
							.map((rule) -> escalation(rule, today))
							.toList()),
				new RuleSection("dosing", "What a suggestion is limited by",
						"The defaults; what the clinic has set stands under Settings.",
						Arrays.stream(DosingSetting.values()).map((setting) -> dosing(setting, today)).toList()));
	}

	/** The rules whose check has run out, in a sentence; empty when there are none. */
	Optional<String> past() {
		List<String> names = all().stream()
			.flatMap((section) -> section.lines().stream())
			.filter(RuleLine::past)
			.map(RuleLine::name)
			.toList();
		if (names.isEmpty()) {
			return Optional.empty();
		}
		String howMany = (names.size() == 1) ? "One rule is past the date until which it was checked: "
				: names.size() + " rules are past the date until which they were checked: ";
		return Optional.of(howMany + names.stream().limit(5).collect(Collectors.joining("; "))
				+ ((names.size() > 5) ? "; and more" : "")
				+ ". What is past its date goes on counting: hold it against its source again, and take a newer version.");
	}

	private static RuleLine message(MessageRule rule, LocalDate today) {
		return RuleLine.of(Wording.sentence(Wording.words(rule.level())) + ": " + rule.reason(), "", rule.basis(),
				today);
	}

	private static RuleLine escalation(EscalationRule rule, LocalDate today) {
		return RuleLine.of(Wording.sentence(rule.name().replace('-', ' ')), rule.fits(), rule.basis(), today);
	}

	private RuleLine dosing(DosingSetting setting, LocalDate today) {
		return RuleLine.of(this.words.name(setting), DosingWords.amount(setting, setting.standard()), setting.basis(),
				today);
	}

}
