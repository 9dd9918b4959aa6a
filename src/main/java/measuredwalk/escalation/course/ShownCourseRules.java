package measuredwalk.escalation.course;

import java.util.List;

import measuredwalk.escalation.EscalationRule;
import measuredwalk.escalation.EscalationRules;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** The rules about a dog's course, to be shown. */
@Component
@Order(1)
class ShownCourseRules implements EscalationRules {

	@Override
	public List<EscalationRule> all() {
		return CourseRules.all()
			.stream()
			.map((rule) -> new EscalationRule(rule.name(), rule.fits(), rule.basis()))
			.toList();
	}

}
