// Tells the office in which zone this device reads times; without it the practice's zone is used and named.
for (const field of document.querySelectorAll('[data-my-zone]')) field.value ||= Intl.DateTimeFormat().resolvedOptions().timeZone ?? '';
