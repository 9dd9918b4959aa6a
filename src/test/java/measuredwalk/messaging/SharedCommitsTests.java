package measuredwalk.messaging;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;

import org.h2.jdbcx.JdbcDataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

class SharedCommitsTests {

	private static final int WRITERS = 8;

	private final ExecutorService writers = Executors.newFixedThreadPool(WRITERS);

	private JdbcClient database;

	private SharedCommits commits;

	@BeforeEach
	void makeATable() {
		JdbcDataSource source = new JdbcDataSource();
		source.setUrl("jdbc:h2:mem:shared-commits;DB_CLOSE_DELAY=-1");
		this.database = JdbcClient.create(source);
		this.database.sql("drop table if exists mark").update();
		this.database.sql("create table mark (id integer primary key)").update();
		this.commits = new SharedCommits(new TransactionTemplate(new DataSourceTransactionManager(source)));
	}

	@AfterEach
	void stop() {
		this.writers.shutdownNow();
	}

	private void write(int id) {
		this.commits.run(() -> this.database.sql("insert into mark values (?)").param(id).update());
	}

	private int count() {
		return this.database.sql("select count(*) from mark").query(Integer.class).single();
	}

	@Test
	void whatIsWrittenIsCommittedWhenTheCallReturns() {
		write(1);
		assertThat(count()).isEqualTo(1);
	}

	@Test
	void manyWritersLoseNothing() throws Exception {
		var all = IntStream.range(0, 200).mapToObj((id) -> this.writers.submit(() -> write(id))).toList();
		for (Future<?> each : all) {
			each.get();
		}
		assertThat(count()).isEqualTo(200);
	}

	@Test
	void aWriteThatFailsFailsAlone() throws Exception {
		write(1);
		CountDownLatch held = new CountDownLatch(1);
		Future<?> slow = this.writers.submit(() -> this.commits.run(() -> await(held)));
		Future<?> twice = this.writers.submit(() -> write(1));
		Future<?> other = this.writers.submit(() -> write(2));
		held.countDown();
		slow.get();
		other.get();
		assertThatThrownBy(twice::get).hasMessageContaining("PRIMARY KEY");
		assertThat(count()).isEqualTo(2);
	}

	private static void await(CountDownLatch latch) {
		try {
			latch.await();
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
		}
	}

}
