package measuredwalk.browser;

import measuredwalk.messaging.Channel;
import measuredwalk.messaging.Delivery;
import measuredwalk.messaging.Parcel;
import org.springframework.stereotype.Component;

/**
 * The page reads the outbox itself, so a message has arrived as soon as it is handed on.
 */
@Component
class BrowserChannel implements Channel {

	static final String NAME = "browser";

	@Override
	public String name() {
		return NAME;
	}

	@Override
	public Delivery deliver(Parcel parcel) {
		return Delivery.taken(parcel.address());
	}

}
