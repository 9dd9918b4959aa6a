package measuredwalk;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Says where the program can be found once it is ready. */
@Component
class ReadyNotice {

	private static final Logger log = LoggerFactory.getLogger(ReadyNotice.class);

	@EventListener
	void ready(ApplicationReadyEvent event) {
		if (event.getApplicationContext() instanceof WebServerApplicationContext context
				&& context.getWebServer() != null) {
			log.info("Measured Walk is ready at http://{}:{}/",
					context.getEnvironment().getProperty("server.address", "127.0.0.1"),
					context.getWebServer().getPort());
		}
	}

}
