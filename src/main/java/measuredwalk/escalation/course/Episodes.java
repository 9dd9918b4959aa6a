package measuredwalk.escalation.course;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Spells in which a rule fits. Each is told of once, and again when it becomes worse. */
@Component
class Episodes {

	/** A rule that has not fitted for so many days fits a new spell. Ours, no source. */
	private static final int OVER_AFTER_DAYS = 3;

	private final JdbcClient database;

	Episodes(JdbcClient database) {
		this.database = database;
	}

	/**
	 * Notes that a rule fits.
	 * @return true when the clinic must hear of it: a new spell, or a worse one
	 */
	boolean news(UUID dogId, CourseRule rule, Finding finding, LocalDate today) {
		Optional<Episode> before = this.database
			.sql("select worst, last_fit_on from course_episode where dog_id = ? and rule = ?")
			.params(dogId, rule.name())
			.query(Episode.class)
			.optional()
			.filter((episode) -> !episode.lastFitOn().plusDays(OVER_AFTER_DAYS).isBefore(today));
		boolean worse = before.isPresent() && finding.measure() >= before.get().worst() + rule.worseningStep();
		double worst = before.map(Episode::worst).orElse(finding.measure());
		keep(dogId, rule, worse ? finding.measure() : worst, today);
		return before.isEmpty() || worse;
	}

	private void keep(UUID dogId, CourseRule rule, double worst, LocalDate today) {
		int changed = this.database
			.sql("update course_episode set worst = ?, last_fit_on = ? where dog_id = ? and rule = ?")
			.params(worst, today, dogId, rule.name())
			.update();
		if (changed == 0) {
			this.database.sql("""
					insert into course_episode (dog_id, rule, worst, last_fit_on) values (?, ?, ?, ?)
					on conflict do nothing""").params(dogId, rule.name(), worst, today).update();
		}
	}

	/** A spell as it is stored. */
	record Episode(double worst, LocalDate lastFitOn) {
	}

}
