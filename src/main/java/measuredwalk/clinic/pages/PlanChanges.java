package measuredwalk.clinic.pages;

import measuredwalk.clinic.access.AccessRecord;
import measuredwalk.clinic.caseload.Caseload;
import measuredwalk.household.Carer;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.household.Refused;
import measuredwalk.messaging.Outbox;
import measuredwalk.messaging.OutgoingMessage;
import measuredwalk.suggestions.Suggestions;
import measuredwalk.tolerance.Suggestion;
import org.springframework.stereotype.Component;

/** What a change of plan would do, and what follows when it is saved. */
@Component
class PlanChanges {

	private final Suggestions suggestions;

	private final Households households;

	private final Outbox outbox;

	private final Caseload caseload;

	private final AccessRecord record;

	private final OwnerWords words;

	PlanChanges(Suggestions suggestions, Households households, Outbox outbox, Caseload caseload, AccessRecord record,
			OwnerWords words) {
		this.suggestions = suggestions;
		this.households = households;
		this.outbox = outbox;
		this.caseload = caseload;
		this.record = record;
		this.words = words;
	}

	String preview(Dog dog, PlanForm form) {
		try {
			Suggestion now = this.suggestions.today(dog);
			Suggestion then = this.suggestions.underPlan(dog, form.plan(dog));
			String why = then.reasons().stream().findFirst().map(Wording::words).orElse("");
			return "Today's suggestion would be " + Wording.dose(then.walks(), then.minutes()) + " (now "
					+ Wording.dose(now.walks(), now.minutes()) + "): " + why + "; chance of trouble "
					+ Math.round(100 * then.chanceOfTrouble()) + " in 100. Nothing is saved yet.";
		}
		catch (Refused ex) {
			return "That cannot be saved: " + ex.getMessage();
		}
	}

	/** Tells the household in plain words, unless nothing of the plan is different. */
	void saved(Dog before, Dog after, String staff) {
		this.record.add(staff, "changed plan or medicines", after.id().toString());
		this.caseload.lookAt(after.id());
		if (samePlan(before, after)) {
			return;
		}
		String told = this.words.planChanged(after);
		for (Carer carer : this.households.carersOf(after.household().id())) {
			this.outbox.write(carer.chatId(), "plan/" + after.id() + "/" + java.util.UUID.randomUUID(),
					OutgoingMessage.of(told));
		}
	}

	private static boolean samePlan(Dog before, Dog after) {
		return before.plan().planMinutes() == after.plan().planMinutes()
				&& before.plan().walksPerDay() == after.plan().walksPerDay()
				&& before.plan().minMinutes() == after.plan().minMinutes()
				&& before.plan().maxMinutes() == after.plan().maxMinutes();
	}

}
