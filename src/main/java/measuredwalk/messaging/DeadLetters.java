package measuredwalk.messaging;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** Messages that did not get through, for people to look at. */
@Service
public class DeadLetters {

	private final JdbcClient database;

	DeadLetters(JdbcClient database) {
		this.database = database;
	}

	/**
	 * What did not get through lately.
	 * @param since only what came in or was written from then on
	 * @param most how many of each kind at most
	 * @return the letters, the newest first
	 */
	public List<DeadLetter> since(Instant since, int most) {
		return Stream
			.of(of(DeadLetter.Kind.NOT_SENT, """
					select o.chat_id, c.channel, o.failure, o.written_at as at from outbox_message o
					join chat c on c.id = o.chat_id where o.state = 'dead' and o.written_at >= ?
					order by o.id desc fetch first ? rows only""", since, most), of(DeadLetter.Kind.NOT_HANDLED, """
					select i.chat_id, i.channel, i.failure, i.received_at as at from inbox_message i
					where i.state = 'failed' and i.received_at >= ? order by i.id desc fetch first ? rows only""",
					since, most), of(DeadLetter.Kind.NOT_READ, """
							select cast(null as bigint) as chat_id, channel, failure, received_at as at from dead_update
							where received_at >= ? order by id desc fetch first ? rows only""", since, most))
			.flatMap(List::stream)
			.sorted(Comparator.comparing(DeadLetter::at).reversed())
			.toList();
	}

	private List<DeadLetter> of(DeadLetter.Kind kind, String query, Instant since, int most) {
		return this.database.sql(query)
			.params(since.atOffset(ZoneOffset.UTC), most)
			.query((row, number) -> letter(kind, row))
			.list();
	}

	private static DeadLetter letter(DeadLetter.Kind kind, ResultSet row) throws SQLException {
		return new DeadLetter(kind, row.getObject("chat_id", Long.class), row.getString("channel"),
				Objects.requireNonNullElse(row.getString("failure"), "no reason is known"),
				row.getObject("at", OffsetDateTime.class).toInstant());
	}

}
