package measuredwalk.clinic.audit;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;

import measuredwalk.escalation.Alerts;
import measuredwalk.escalation.BurdenDays;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.journal.Journal;
import measuredwalk.suggestions.Suggestions;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * The audit of the caseload. What each dog adds is counted when its day begins and kept,
 * so that the page does not follow every dog through its history.
 */
@Service
public class Audits {

	/** The audit looks back so many days. */
	public static final int DAYS = 28;

	private final JdbcClient database;

	private final Households households;

	private final Journal journal;

	private final Suggestions suggestions;

	private final BurdenDays burden;

	private final Alerts alerts;

	private final Clock clock;

	Audits(JdbcClient database, Households households, Journal journal, Suggestions suggestions, BurdenDays burden,
			Alerts alerts, Clock clock) {
		this.database = database;
		this.households = households;
		this.journal = journal;
		this.suggestions = suggestions;
		this.burden = burden;
		this.alerts = alerts;
		this.clock = clock;
	}

	/**
	 * Counts what a dog adds, afresh.
	 * @param dog the dog
	 */
	@Transactional(propagation = Propagation.REQUIRES_NEW)
	public void count(Dog dog) {
		LocalDate today = this.clock.instant().atZone(dog.household().timeZone()).toLocalDate();
		keep(DogCount.of(dog, today, this.suggestions.days(dog, today.minusDays(DAYS - 1L)),
				this.journal.walks(dog.id()), this.journal.mornings(dog.id()), this.burden.flares(dog, today, DAYS)));
	}

	private void keep(DogAudit audit) {
		this.database.sql("""
				insert into dog_audit (dog_id, days, walks, walks_in_band, flares, mornings_answered, mornings_expected)
				values (?, 0, 0, 0, 0, 0, 0) on conflict do nothing""").param(audit.dogId()).update();
		this.database.sql("""
				update dog_audit set days = ?, walks = ?, walks_in_band = ?, flares = ?, mornings_answered = ?,
				mornings_expected = ? where dog_id = ?""")
			.params(audit.days(), audit.walks(), audit.walksInBand(), audit.flares(), audit.morningsAnswered(),
					audit.morningsExpected(), audit.dogId())
			.update();
	}

	/**
	 * What each dog adds, as counted when its day began.
	 * @return one for each dog that was counted
	 */
	public List<DogAudit> dogs() {
		return this.database.sql("""
				select dog_id, days, walks, walks_in_band, flares, mornings_answered, mornings_expected from dog_audit
				order by dog_id""").query(DogAudit.class).list();
	}

	/**
	 * The figures of the whole caseload.
	 * @return the figures
	 */
	public AuditFigures figures() {
		return AuditFigures.of(dogs(), this.alerts.list(null), this.clock.instant());
	}

	/**
	 * The audit as a file for a spreadsheet, a line for each dog.
	 * @return the lines, with a head
	 */
	public String asCsv() {
		return AuditCsv.of(this.households.dogs(), dogs(), this.alerts.list(null), this.clock.instant());
	}

}
