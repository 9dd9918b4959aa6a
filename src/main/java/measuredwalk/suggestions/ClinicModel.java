package measuredwalk.suggestions;

import java.util.concurrent.atomic.AtomicReference;

import measuredwalk.household.ReadOnce;
import measuredwalk.tolerance.DosingSettings;
import measuredwalk.tolerance.ToleranceModel;
import org.springframework.stereotype.Component;

/**
 * The tolerance model with the dosing rule that the clinic has set. The rule is asked for
 * in each transaction, as another instance may have changed it; the model is made anew
 * only when it has.
 */
@Component
class ClinicModel {

	private final DosingRules rules;

	private final AtomicReference<Made> last = new AtomicReference<>(Made.by(DosingSettings.standard()));

	private final ReadOnce<String, DosingSettings> ruleRead = new ReadOnce<>();

	ClinicModel(DosingRules rules) {
		this.rules = rules;
	}

	/** A model and the rule that it was made by. */
	private record Made(DosingSettings rule, ToleranceModel model) {

		static Made by(DosingSettings rule) {
			return new Made(rule, new ToleranceModel(rule));
		}

	}

	/** The rule that counts now. */
	DosingSettings rule() {
		return this.ruleRead.of("rule", this.rules::current);
	}

	ToleranceModel now() {
		DosingSettings rule = rule();
		return this.last.updateAndGet((made) -> made.rule().equals(rule) ? made : Made.by(rule)).model();
	}

}
