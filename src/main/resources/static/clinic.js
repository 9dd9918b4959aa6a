'use strict';
document.addEventListener('click', (event) => {
	if (event.target.closest('[data-print]')) {
		window.print();
	}
});
// The newest days stand at the right end; on a narrow screen that end is shown first.
document.addEventListener('DOMContentLoaded', () => {
	document.querySelectorAll('.timeline').forEach((picture) => {
		picture.scrollLeft = picture.scrollWidth;
	});
});
