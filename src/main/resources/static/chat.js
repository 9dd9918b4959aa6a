// Keeps the newest message in sight and the writing line ready; the page works without it.
(function () {
	'use strict';
	function showNewest() {
		window.scrollTo({ top: document.body.scrollHeight });
	}
	document.addEventListener('DOMContentLoaded', showNewest);
	document.body.addEventListener('htmx:afterSwap', showNewest);
	// A picture has its height only when it is there; load events do not bubble.
	document.addEventListener('load', function (event) {
		if (event.target.matches && event.target.matches('li:last-child img')) {
			showNewest();
		}
	}, true);
	document.body.addEventListener('htmx:afterRequest', function (event) {
		if (event.detail.elt.id === 'answer' && event.detail.successful) {
			document.getElementById('text').value = '';
			document.getElementById('text').focus();
		}
	});
}());
