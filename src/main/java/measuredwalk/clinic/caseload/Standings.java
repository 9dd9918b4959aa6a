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
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** How each dog stood when it was last looked at, as it is kept. */
@Component
class Standings {

	private final JdbcClient database;

	private final Households households;

	private final Journal journal;

	private final Suggestions suggestions;

	Standings(JdbcClient database, Households households, Journal journal, Suggestions suggestions) {
		this.database = database;
		this.households = households;
		this.journal = journal;
		this.suggestions = suggestions;
	}

	List<DogStanding> all() {
		return this.database.sql("select * from dog_standing order by concern desc, last_heard_at desc, dog_id")
			.query(Standings::standing)
			.list();
	}

	@Transactional(propagation = Propagation.REQUIRES_NEW)
	void lookAt(UUID dogId) {
		this.households.dog(dogId).ifPresent((dog) -> keep(judged(dog)));
	}

	@Transactional(propagation = Propagation.REQUIRES_NEW)
	void outdate() {
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
