// How a person likes the pages is kept in cookies, so that the server draws them right the first time.
function gudgeonLike(name, value) {
    document.cookie = `${name}=${encodeURIComponent(value)};path=/;max-age=31536000;samesite=strict`;
    if (name === 'gudgeon-look') {
        document.documentElement.dataset.look = value;
    }
}

// Set when the page's connection to the program stands, so that it answers.
function gudgeonLive() {
    document.documentElement.dataset.live = '';
}

// The first time, the look is that of the machine.
if (!document.cookie.includes('gudgeon-look=') && navigator.cookieEnabled) {
    const dark = matchMedia('(prefers-color-scheme: dark)').matches;
    gudgeonLike('gudgeon-look', dark ? 'dark' : 'light');
    if (dark && document.cookie.includes('gudgeon-look=')) {
        location.reload();
    }
}

// On pages without a connection of their own, the buttons in the head keep the liking and load again.
document.addEventListener('click', e => {
    const button = e.target.closest('[data-like]');
    if (button && !window.Blazor) {
        gudgeonLike(button.dataset.like, button.dataset.value);
        location.reload();
    }
});

// A sheet that is made to be printed has a button for it.
document.addEventListener('click', e => e.target.closest('[data-print]') && window.print());

// A picture may be taken away again before the plotting library, which draws a moment later, comes to it: nothing is lost by that.
addEventListener('error', e => {
    if (/No DOM element with id 'sheet-/.test(e.message)) {
        e.preventDefault();
    }
});
