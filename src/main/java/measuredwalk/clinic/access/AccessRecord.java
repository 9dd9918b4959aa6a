package measuredwalk.clinic.access;

import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** The record of who of the staff saw and changed what. It is only ever added to. */
@Service
public class AccessRecord {

	private static final int LONGEST_ABOUT = 120;

	private final JdbcClient database;

	private final Clock clock;

	AccessRecord(JdbcClient database, Clock clock) {
		this.database = database;
		this.clock = clock;
	}

	/**
	 * A line of the record.
	 *
	 * @param at when
	 * @param staff who
	 * @param what what was seen or done
	 * @param about the number of the dog or alert, or empty
	 */
	public record Line(Instant at, String staff, String what, String about) {
	}

	/**
	 * Adds a line.
	 * @param staff who
	 * @param what what was seen or done
	 * @param about the number of the dog or alert, or empty; never an owner's words
	 */
	public void add(String staff, String what, String about) {
		String shortAbout = (about.length() <= LONGEST_ABOUT) ? about : about.substring(0, LONGEST_ABOUT);
		this.database.sql("insert into access_record (at, staff, what, about) values (?, ?, ?, ?)")
			.params(this.clock.instant().atOffset(ZoneOffset.UTC), staff, what, shortAbout)
			.update();
	}

	/**
	 * The newest lines.
	 * @param about only those about this number, or empty for all
	 * @param most how many at most
	 * @return lines, the newest first
	 */
	public List<Line> newest(String about, int most) {
		return this.database.sql("""
				select at, staff, what, about from access_record where (? = '' or about = ?)
				order by id desc fetch first ? rows only""")
			.params(about, about, most)
			.query((row, number) -> new Line(row.getObject("at", OffsetDateTime.class).toInstant(),
					row.getString("staff"), row.getString("what"), row.getString("about")))
			.list();
	}

}
