package measuredwalk.household;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;

import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * What was read in this transaction. One message asks for a dog's plans or walks many
 * times over; what the transaction itself writes has to be forgotten here.
 *
 * @param <K> what it is read by
 * @param <T> what is read, never changed
 */
public final class ReadOnce<K, T> {

	/**
	 * What was read before.
	 * @param key what it is read by
	 * @param read reads it when it is not remembered; without a transaction always
	 * @return what was read
	 */
	@SuppressWarnings("unchecked")
	public T of(K key, Supplier<T> read) {
		if (!TransactionSynchronizationManager.isSynchronizationActive()) {
			return read.get();
		}
		Map<K, T> known = (Map<K, T>) TransactionSynchronizationManager.getResource(this);
		if (known == null) {
			known = new HashMap<>();
			begin(known);
		}
		T value = known.get(key);
		if (value == null) {
			value = read.get();
			known.put(key, value);
		}
		return value;
	}

	/**
	 * Lets it be read afresh.
	 * @param key what it is read by
	 */
	@SuppressWarnings("unchecked")
	public void forget(K key) {
		Map<K, T> known = (Map<K, T>) TransactionSynchronizationManager.getResource(this);
		if (known != null) {
			known.remove(key);
		}
	}

	/** A transaction that begins inside this one remembers by itself. */
	private void begin(Map<K, T> known) {
		TransactionSynchronizationManager.bindResource(this, known);
		TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {

			@Override
			public void suspend() {
				TransactionSynchronizationManager.unbindResource(ReadOnce.this);
			}

			@Override
			public void resume() {
				TransactionSynchronizationManager.bindResource(ReadOnce.this, known);
			}

			@Override
			public void afterCompletion(int status) {
				TransactionSynchronizationManager.unbindResourceIfPossible(ReadOnce.this);
			}

		});
	}

}
