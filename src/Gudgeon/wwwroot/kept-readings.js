// Readings that this device keeps until the book has them. Each is one item of the browser's storage, written before
// anything else is done with it, so that two open pages never write over one another and a reload loses none.
//
// A reading is kept, then stored (in the book) or refused (with the sentence that says why). Only a reading that was
// refused can be thrown away: of one that is kept nobody here knows whether the program has it already.

const FIRST_WAIT = 1000;
const LONGEST_WAIT = 30000;
const PATIENCE = 15000;

/** A GUID; the browser's own maker of them is not there on a plain http address of the local network. */
export function newId() {
    const bytes = crypto.getRandomValues(new Uint8Array(16));
    bytes[6] = (bytes[6] & 0x0f) | 0x40;
    bytes[8] = (bytes[8] & 0x3f) | 0x80;
    const hex = [...bytes].map(b => b.toString(16).padStart(2, '0')).join('');
    return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}

/** Raises "change" when a reading or the state of the sending has changed, and "stored" with the reading and its answer. */
export class KeptReadings extends EventTarget {
    /** Why the last try failed; empty when all went well. */
    trouble = '';
    /** Whether the program does not let this device in. */
    shutOut = false;
    /** Whether the browser refuses to keep readings. */
    unsafe = false;

    #url;
    #prefix;
    #unsaved = new Map();
    #sending = false;
    #failures = 0;
    #timer = 0;

    constructor(book) {
        super();
        this.#url = `/book/${encodeURIComponent(book)}/readings`;
        this.#prefix = `gudgeon-reading:${book}:`;
        for (const sign of ['online', 'focus', 'pageshow']) {
            addEventListener(sign, () => this.send());
        }
        document.addEventListener('visibilitychange', () => document.hidden || this.send());
        addEventListener('storage', e => e.key?.startsWith(this.#prefix) && this.#changed());
    }

    /** Every reading, in the order in which they were taken. */
    get all() {
        const found = new Map(this.#unsaved);
        for (const key of Object.keys(localStorage)) {
            const reading = this.#read(key);
            if (reading) {
                found.set(reading.id, reading);
            }
        }
        return [...found.values()].sort((a, b) => a.at - b.at);
    }

    /** Writes a reading down. */
    keep(reading) {
        try {
            localStorage.setItem(this.#prefix + reading.id, JSON.stringify(reading));
            this.#unsaved.delete(reading.id);
        } catch {
            this.#unsaved.set(reading.id, reading);
        }
        this.unsafe = this.#unsaved.size > 0;
        this.#changed();
    }

    /** Throws a refused or stored reading away. */
    drop(id) {
        localStorage.removeItem(this.#prefix + id);
        this.#unsaved.delete(id);
        this.#changed();
    }

    /** Sends what is kept, oldest first, until all is answered or the program is away. */
    async send() {
        if (this.#sending) {
            return;
        }
        this.#sending = true;
        clearTimeout(this.#timer);
        try {
            for (let next = this.#next(); next; next = this.#next()) {
                if (!await this.#post(next)) {
                    this.#later();
                    return;
                }
            }
            this.#failures = 0;
            this.trouble = '';
        } finally {
            this.#sending = false;
            this.#changed();
        }
    }

    #next() {
        return this.all.find(r => r.state === 'kept');
    }

    #read(key) {
        if (!key.startsWith(this.#prefix)) {
            return null;
        }
        try {
            return JSON.parse(localStorage.getItem(key));
        } catch {
            return null;
        }
    }

    /** Sends one reading; false when it must be tried again. */
    async #post(reading) {
        const { id, path, text, by, on, note, partAt, toolAt } = reading;
        let response, answer;
        try {
            response = await fetch(this.#url, {
                method: 'POST',
                headers: { 'Content-Type': 'application/json' },
                body: JSON.stringify({ id, path, text, with: reading.with, by, on, note, partAt, toolAt }),
                signal: AbortSignal.timeout(PATIENCE),
            });
            answer = response.headers.get('Content-Type')?.includes('json') ? await response.json() : { sentence: await response.text() };
        } catch {
            this.trouble = 'the program cannot be reached';
            return false;
        }
        this.shutOut = response.status === 401;
        return this.#answered(reading, response, answer);
    }

    #answered(reading, response, answer) {
        if (response.ok && answer.id === reading.id) {
            this.keep({ ...reading, state: 'stored', revision: answer.revision, text: answer.kept ?? reading.text, warnings: answer.warnings, stored: new Date().toISOString() });
            this.dispatchEvent(new CustomEvent('stored', { detail: { reading, answer } }));
            return true;
        }
        if ([400, 409, 413, 415].includes(response.status)) {
            this.keep({ ...reading, state: 'refused', sentence: answer.sentence });
            return true;
        }
        this.trouble = answer.sentence || `the program answers ${response.status}`;
        return false;
    }

    #later() {
        this.#timer = setTimeout(() => this.send(), Math.min(LONGEST_WAIT, FIRST_WAIT * 2 ** this.#failures));
        this.#failures++;
    }

    #changed() {
        this.dispatchEvent(new Event('change'));
    }
}
