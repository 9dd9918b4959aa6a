package measuredwalk.household;

import java.util.ArrayList;
import java.util.List;

import org.h2.jdbcx.JdbcDataSource;
import org.junit.jupiter.api.Test;

import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

import static org.assertj.core.api.Assertions.assertThat;

class ReadOnceTests {

	private final ReadOnce<String, Integer> read = new ReadOnce<>();

	private final TransactionTemplate transaction = new TransactionTemplate(
			new DataSourceTransactionManager(database()));

	private int reads;

	private static JdbcDataSource database() {
		JdbcDataSource database = new JdbcDataSource();
		database.setUrl("jdbc:h2:mem:");
		return database;
	}

	private int ask() {
		return this.read.of("Bracken", () -> ++this.reads);
	}

	@Test
	void readsOnceInATransactionAndAfreshInTheNext() {
		List<Integer> answers = new ArrayList<>();
		for (int each = 0; each < 2; each++) {
			this.transaction.executeWithoutResult((status) -> answers.addAll(List.of(ask(), ask())));
		}
		assertThat(answers).containsExactly(1, 1, 2, 2);
	}

	@Test
	void readsAfreshWhatTheTransactionItselfChanged() {
		this.transaction.executeWithoutResult((status) -> {
			assertThat(ask()).isEqualTo(1);
			this.read.forget("Bracken");
			assertThat(ask()).isEqualTo(2);
		});
	}

	@Test
	void aTransactionInsideAnotherReadsByItselfAndTheOuterOneGoesOn() {
		TransactionTemplate inner = new TransactionTemplate(this.transaction.getTransactionManager());
		inner.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
		this.transaction.executeWithoutResult((status) -> {
			assertThat(ask()).isEqualTo(1);
			inner.executeWithoutResult((within) -> assertThat(ask()).isEqualTo(2));
			assertThat(ask()).isEqualTo(1);
		});
	}

	@Test
	void remembersNothingWithoutATransaction() {
		assertThat(List.of(ask(), ask())).containsExactly(1, 2);
	}

	@Test
	void forgetsWithATransactionThatIsRolledBack() {
		this.transaction.executeWithoutResult((status) -> {
			ask();
			status.setRollbackOnly();
		});
		assertThat(ask()).isEqualTo(2);
	}

}
