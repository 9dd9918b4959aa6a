package measuredwalk.clinic.caseload;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;

import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.journal.Journal;
import measuredwalk.suggestions.Suggestions;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * How all dogs stand. It is worked out from journal and model whenever something is told
 * or a day begins, and can be thrown away at any time.
 */
@Service
public class Caseload {

	private final JdbcClient database;

	private final Households households;

	private final Journal journal;

	private final Suggestions suggestions;

	Caseload(JdbcClient database, Households households, Journal journal, Suggestions suggestions) {
		this.database = database;
		this.households = households;
		this.journal = journal;
		this.suggestions = suggestions;
	}

	/**
	 * How all dogs stood when they were last looked at.
	 * @return one for each dog that was looked at, the ones of most concern first
	 */
	public List<DogStanding> all() {
		return this.database.sql("select * from dog_standing order by concern desc, last_heard_at desc, dog_id")
			.query(Caseload::standing)
			.list();
	}

	/**
	 * Looks at a dog afresh.
	 * @param dogId the dog; nothing happens when there is no such dog
	 */
	@Transactional(propagation = Propagation.REQUIRES_NEW)
	public void lookAt(UUID dogId) {
		this.households.dog(dogId).ifPresent((dog) -> keep(judged(dog)));
	}

	/**
	 * Lets all dogs be looked at afresh in the next round. Until then the list shows how
	 * they stood.
	 */
	@Transactional(propagation = Propagation.REQUIRES_NEW)
	public void outdate() {
		this.database.sql("update dog_standing set for_date = ?").param(LocalDate.EPOCH).update();
	}

	private DogStanding judged(Dog dog) {
		return new StandingJudge(dog, this.journal.walks(dog.id()), this.journal.mornings(dog.id()))
			.judge(this.suggestions.today(dog));
	}

	private void keep(DogStanding standing) {
		Instant heard = standing.lastHeardAt();
		Object[] fields = { standing.date(), standing.concern().ordinal(), standing.reason(), standing.minutes(),
				standing.walks(), (heard != null) ? heard.atOffset(ZoneOffset.UTC) : null, standing.morningsAnswered(),
				standing.morningsExpected(), standing.dogId() };
		this.database.sql("""
				insert into dog_standing (dog_id, for_date, concern, reason, mornings_answered, mornings_expected)
				values (?, ?, 0, '', 0, 0) on conflict do nothing""")
			.params(standing.dogId(), standing.date())
			.update();
		this.database
			.sql("""
					update dog_standing set for_date = ?, concern = ?, reason = ?, minutes = ?, walks = ?, last_heard_at = ?,
					mornings_answered = ?, mornings_expected = ? where dog_id = ?""")
			.params(fields)
			.update();
	}

	private static DogStanding standing(ResultSet row, int number) throws SQLException {
		return new DogStanding(row.getObject("dog_id", UUID.class), row.getObject("for_date", LocalDate.class),
				Concern.values()[row.getInt("concern")], row.getString("reason"), row.getDouble("minutes"),
				row.getInt("walks"), heard(row), row.getInt("mornings_answered"), row.getInt("mornings_expected"));
	}

	private static @Nullable Instant heard(ResultSet row) throws SQLException {
		OffsetDateTime time = row.getObject("last_heard_at", OffsetDateTime.class);
		return (time != null) ? time.toInstant() : null;
	}

}
