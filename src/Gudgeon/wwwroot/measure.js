// The page at the bench. It is handed everything it needs and asks the program only to take readings and for verdicts.
import { KeptReadings, newId } from './kept-readings.js';

const bench = JSON.parse(find('bench').textContent);
const all = [...bench.places, ...bench.plans];
const places = new Map(all.map(p => [p.path, p]));
const kept = new KeptReadings(bench.book);
const liking = recall();

let place = null;
let typed = '';
let correcting = '';
let lastAt = 0;
let watch = 0;

// ---- small helpers

function find(id) {
    return document.getElementById(id);
}

/** An element with its attributes and what is in it. */
function made(tag, attributes = {}, ...inside) {
    const element = document.createElement(tag);
    for (const [name, value] of Object.entries(attributes)) {
        if (name === 'click') {
            element.addEventListener('click', value);
        } else {
            element.setAttribute(name, value);
        }
    }
    element.append(...inside.filter(i => i));
    return element;
}

function several(count, one, more = one + 's') {
    return `${count} ${count === 1 ? one : more}`;
}

/** As many significant figures as are wanted, no exponent where a person would not write one. */
function figures(value, digits = 5) {
    const shown = Number(value.toPrecision(digits));
    return Math.abs(shown) >= 1e-5 && Math.abs(shown) < 1e9 ? shown.toLocaleString('en', { useGrouping: false, maximumSignificantDigits: digits }) : String(shown);
}

function fieldOf(of = place) {
    return bench.fields[of.field];
}

function nameOf(of) {
    return `${of.part}: ${labelOf(of)}`;
}

/** A plan has a name of its own, and the units of the field of which it takes the mean. */
function labelOf(of) {
    return of.label ?? fieldOf(of).label;
}

function withUnit(number, unit) {
    return unit ? `${number} ${unit}` : `${number}`;
}

/** The unit of a field's dimension with this symbol. */
function unitOf(field, symbol) {
    return bench.units[field.dimension].find(u => u.symbol === symbol);
}

// ---- what is remembered on this device

function recall() {
    const fresh = { who: bench.who, whoWas: bench.who, with: '', units: {}, spreads: {}, instruments: [], steps: {}, rounds: 1 };
    try {
        const known = { ...fresh, ...JSON.parse(localStorage.getItem(`gudgeon-bench:${bench.book}`) ?? '{}') };
        return known.whoWas === bench.who ? known : { ...known, who: bench.who, whoWas: bench.who };
    } catch {
        return fresh;
    }
}

function remember() {
    try {
        localStorage.setItem(`gudgeon-bench:${bench.book}`, JSON.stringify(liking));
    } catch {
        // What is liked is lost with the page; readings are not kept this way.
    }
}

function unitNow() {
    const field = fieldOf();
    const system = bench.imperial ? 'imperial' : 'metric';
    return unitOf(field, liking.units[`${system}:${place.field}`] ?? field[system]);
}

/** The ± of the instrument in hand for what is measured, in the unit in which it was given; null when none is known. */
function spreadNow() {
    const { dimension } = fieldOf();
    const told = liking.spreads[`${liking.with}|${dimension}`];
    return told !== undefined ? told : ownNow() ? null : bench.instruments.find(i => i.name === liking.with)?.spreads[dimension] ?? null;
}

/** The instrument in hand where it is one of the book's: the book then adds its ± to a reading that states none. */
function ownNow() {
    const name = liking.with.trim().replaceAll(' ', '-').toLowerCase();
    return bench.own.find(i => i.name.toLowerCase() === name);
}

// ---- picking a part

function drawPlaces() {
    const words = find('search').value.toLowerCase().split(/\s+/).filter(w => w);
    const fits = all.filter(p => words.every(w => `${nameOf(p)} ${p.path}`.toLowerCase().includes(w)));
    const parts = new Set(fits.map(p => p.part));
    const wanted = fits.filter(p => p.wanted);
    find('places').replaceChildren(
        ...(wanted.length ? [group('Wanted by a change', wanted, p => nameOf(p), true)] : []),
        ...[...parts].map(part => group(part, fits.filter(p => p.part === part), labelOf, words.length > 0)));
    find('none').textContent = fits.length ? '' : 'No part that can be measured is called so.';
}

function group(title, list, label, open) {
    return made('details', open ? { open: '' } : {}, made('summary', {}, title), made('ul', {}, ...list.map(p => made('li', {}, made('button', { type: 'button', click: () => choose(p, true) },
        made('span', {}, label(p)), made('span', { class: 'quiet' }, p.holds?.text ?? 'not known yet'))))));
}

/** Opens a part, or with none the list of parts. */
function choose(next, step) {
    place = next;
    typed = '';
    correcting = '';
    clearTimeout(watch);
    find('verdicts').replaceChildren();
    find('pick').hidden = !!place;
    find('take').hidden = !place;
    find('before').hidden = true;
    if (step) {
        history.pushState(null, '', location.pathname + (place ? `?field=${encodeURIComponent(place.path)}` : ''));
        scrollTo(0, 0);
    }
    if (place) {
        drawTake();
    } else {
        drawPlaces();
    }
    draw();
    if (step) {
        find(place ? 'display' : 'search').focus();
    }
}

// ---- the part in hand

function drawTake() {
    const field = fieldOf();
    find('place').textContent = nameOf(place);
    find('unit').replaceChildren(...bench.units[field.dimension].map(u => made('option', { value: u.symbol }, u.symbol || 'plain number')));
    find('unit').value = unitNow().symbol;
    find('instruments').replaceChildren(...[...new Set([...liking.instruments, ...bench.own.map(i => i.name), ...bench.instruments.map(i => i.name)])].map(n => made('option', { value: n })));
    find('people').replaceChildren(...[...new Set([bench.who, ...bench.people])].map(n => made('option', { value: n })));
    find('degrees').hidden = !!place.steps || field.dimension !== 'Length';
    find('with').value = liking.with;
    find('by').value = liking.who;
    find('bench-with').open = !liking.with || !liking.who;
    find('before').hidden = place.readings.length === 0;
    find('before-count').textContent = several(place.readings.length, 'reading');
    find('before-list').replaceChildren(...place.readings.map(r => made('li', {}, `${r.text} (${r.story})${r.note ? `: ${r.note}` : ''}`)));
    drawWith();
    drawUsual();
    drawHolds();
    drawPlan();
    say('');
}

function drawWith() {
    const spread = spreadNow();
    find('spread').value = spread?.text ?? '';
    find('spread-unit').textContent = spread?.unit ?? unitNow().symbol;
    const known = spread ? ` ± ${withUnit(spread.text, spread.unit)}` : ownNow() ? ` (${ownNow().said})` : ', ± not known';
    find('with-words').textContent = liking.with
        ? `${liking.with}${known}; read by ${liking.who}`
        : 'With which instrument?';
}

function usual(unit) {
    const { low, high } = fieldOf();
    const show = si => withUnit(figures((si - unit.offset) / unit.factor), unit.symbol);
    return low === null || high === null ? '' : `${show(low)} to ${show(high)}`;
}

function drawUsual() {
    const field = fieldOf();
    find('how').textContent = [field.how, usual(unitNow()) && `usually ${usual(unitNow())}`, field.help].filter(t => t).join('; ');
}

function drawHolds() {
    const { holds } = place;
    find('holds').textContent = holds
        ? `Now ${holds.text}${holds.repeats > 1 ? `, the mean of ${holds.repeats} readings` : ''}, ${holds.story}${holds.source ? `, from ${holds.source}` : ''}`
        : 'Not known yet.';
}

// ---- the number

function press(key) {
    say('');
    if (key === 'Enter') {
        take();
        return;
    }
    if (key === 'Backspace') {
        typed = typed.slice(0, -1);
    } else if (key === 'Escape') {
        typed = '';
    } else if (key === '-') {
        typed = typed.startsWith('-') ? typed.slice(1) : '-' + typed;
    } else if (typed.length < 15 && !(key === '.' && typed.includes('.'))) {
        typed += key;
    }
    drawNumber();
}

function drawNumber() {
    find('display').textContent = typed ? withUnit(typed.replace('-', '−'), unitNow().symbol) : '';
}

/** Figures from the hardware keyboard, wherever the focus is but in a field where text is typed. */
function typedKey(e) {
    const busy = !place || find('ask').open || e.ctrlKey || e.altKey || e.metaKey || e.target.closest('input, select, textarea');
    const key = e.key === ',' ? '.' : e.key;
    if (busy || !/^([0-9.-]|Backspace|Escape|Enter)$/.test(key) || (key === 'Enter' && e.target.closest('button, a, summary'))) {
        return;
    }
    e.preventDefault();
    press(key);
}

function say(sentence) {
    find('say').textContent = sentence;
    find('say').hidden = !sentence;
}

// ---- taking a reading

async function take() {
    const wrong = lacking();
    if (wrong) {
        say(wrong.sentence);
        if (wrong.field) {
            find('bench-with').open = true;
            find(wrong.field).focus();
        }
        return;
    }
    const reading = place.steps ? null : reckon();
    const { low, high, label } = fieldOf();
    const [number, unit] = [typed, unitNow()];
    const si = Number(number) * unit.factor + unit.offset;
    const out = (low !== null && si < low) || (high !== null && si > high);
    if (out && !await ask(`${label} of ${withUnit(number, unit.symbol)} is outside what is usual (${usual(unitNow())}): take it all the same?`, 'Take it all the same')) {
        find('display').focus();
        return;
    }
    if (reading) {
        kept.keep(reading);
    } else {
        step(number, unit.symbol);
    }
    if (correcting) {
        kept.drop(correcting);
        correcting = '';
    }
    typed = '';
    find('note').value = '';
    find('bench-with').open = false;
    find('display').focus({ preventScroll: true });
    draw();
    kept.send();
}

// ---- a plan: one reading after the other, kept in the book together when the last is there

/** What was read of the plan in hand so far, each with the unit that it was read in. */
function stepsDone() {
    return liking.steps[place.path] ??= [];
}

function stepsWanted() {
    return place.steps.length * liking.rounds;
}

/** Keeps one reading of a plan on this device; with the last of them all go to the book as one table. */
function step(number, unit) {
    const done = stepsDone();
    done.push({ number, unit });
    if (done.length === stepsWanted()) {
        kept.keep({ ...reckon(), number: '', si: 0, spreadSi: 0, text: tableOf(done), partAt: undefined, toolAt: undefined });
        delete liking.steps[place.path];
    }
    remember();
    drawPlan();
}

/** The readings as a table is written: station, first axis, second axis. */
function tableOf(done) {
    const rows = [];
    for (let i = 0; i < done.length; i += 2) {
        const at = place.steps[i % place.steps.length].at * 1000;
        rows.push(`${figures(at)} mm at ${withUnit(done[i].number, done[i].unit)} at ${withUnit(done[i + 1].number, done[i + 1].unit)}`);
    }
    return rows.join('; ');
}

function stepBack() {
    stepsDone().pop();
    remember();
    drawPlan();
    find('display').focus();
}

function drawPlan() {
    find('plan').hidden = !place?.steps;
    if (!place?.steps) {
        return;
    }
    const done = stepsDone();
    const next = place.steps[done.length % place.steps.length];
    const [unit, round] = [unitNow(), Math.floor(done.length / place.steps.length) + 1];
    const at = withUnit(figures((next.at - unit.offset) / unit.factor, 4), unit.symbol);
    find('next').textContent = `Reading ${done.length + 1} of ${stepsWanted()}: ${next.name}, ${at} in, ${next.axis}${liking.rounds > 1 ? `, round ${round}` : ''}`;
    find('rounds').value = liking.rounds;
    find('rounds').disabled = done.length > 0;
    find('step-back').disabled = done.length === 0;
    find('steps').replaceChildren(...done.map((d, i) => made('li', {}, `${withUnit(d.number, d.unit)}, ${place.steps[i % place.steps.length].name}, ${place.steps[i % place.steps.length].axis}`)));
}

/** What is missing before a reading can be taken; null when nothing is. */
function lacking() {
    if (!/\d/.test(typed)) {
        return { sentence: 'There is no number yet: type what the instrument shows.' };
    }
    if (!liking.with) {
        return { sentence: 'With which instrument was it read?', field: 'with' };
    }
    if (!liking.who) {
        return { sentence: 'Who read it?', field: 'by' };
    }
    if (!place.steps && fieldOf().dimension === 'Length' && !find('part-at').value.trim() !== !find('tool-at').value.trim()) {
        return { sentence: 'A reading is brought to 20 °C by two temperatures: that of the part and that of the instrument. Give both or neither.', field: find('part-at').value.trim() ? 'tool-at' : 'part-at' };
    }
    const spread = spreadNow();
    return spread && !(Number(spread.text) > 0) ? { sentence: `The ± of the instrument: given '${spread.text}', wanted a number such as 0.006, or nothing.`, field: 'spread' } : null;
}

function reckon() {
    const now = new Date();
    const unit = unitNow();
    const spread = spreadNow();
    const factor = spread ? unitOf(fieldOf(), spread.unit).factor : 0;
    lastAt = Math.max(now.getTime(), lastAt + 1);
    return {
        id: newId(),
        at: lastAt,
        state: 'kept',
        path: place.path,
        text: withUnit(typed, unit.symbol) + (spread ? ` ± ${withUnit(spread.text, spread.unit)}` : ''),
        with: liking.with,
        by: liking.who,
        on: localTime(now),
        note: find('note').value.trim(),
        ...temperatures(),
        number: typed,
        unit: unit.symbol,
        si: Number(typed) * unit.factor + unit.offset,
        spreadSi: spread ? Number(spread.text) * factor : ownNow()?.dimension === fieldOf().dimension ? ownNow().spread ?? 0 : 0,
    };
}

function localTime(now) {
    return new Date(now.getTime() - now.getTimezoneOffset() * 60000).toISOString().slice(0, 19);
}

/** At which temperatures a length is read, when both are said: the book brings it to 20 °C. */
function temperatures() {
    const [part, tool] = ['part-at', 'tool-at'].map(f => find(f).value.trim().replace(',', '.'));
    const unit = bench.imperial ? '°F' : '°C';
    return fieldOf().dimension === 'Length' && part && tool ? { partAt: withUnit(part, unit), toolAt: withUnit(tool, unit) } : {};
}

/** Asks, and says whether the answer was yes. */
function ask(words, yes, text = '') {
    const dialog = find('ask');
    find('ask-words').textContent = words;
    find('ask-yes').textContent = yes;
    find('ask-text').hidden = !text;
    find('ask-text').value = text;
    return new Promise(answer => {
        find('ask-yes').onclick = () => dialog.close('yes');
        find('ask-no').onclick = () => dialog.close('');
        dialog.onclose = () => answer(dialog.returnValue === 'yes');
        dialog.returnValue = '';
        dialog.showModal();
    });
}

// ---- readings of today

function draw() {
    const all = kept.all;
    drawQueue(all);
    const shown = all.filter(r => r.state !== 'stored' || !place || r.path === place.path);
    find('readings').replaceChildren(...shown.map(row));
    find('no-readings').hidden = shown.length > 0;
    if (place) {
        drawNumber();
        drawMean(all);
    }
}

function drawQueue(all) {
    const waiting = all.filter(r => r.state === 'kept').length;
    const refused = all.filter(r => r.state === 'refused').length;
    const parts = [waiting > 0 ? `${several(waiting, 'reading')} kept in this device, trying again` : 'All in the book.'];
    if (waiting > 0 && kept.shutOut) {
        parts[0] = `${several(waiting, 'reading')} kept in this device: the program does not let it in any more. Pair it again at /pair, then open this page again.`;
    } else if (waiting > 0 && kept.trouble) {
        parts[0] += `: ${kept.trouble}. Go on measuring and stay on this page.`;
    }
    if (refused > 0) {
        parts.push(`${several(refused, 'reading')} refused, to be corrected or discarded below.`);
    }
    if (kept.unsafe) {
        parts.push('This browser keeps nothing for this page: do not close it before all is in the book.');
    }
    const words = (waiting === 0 && refused > 0 ? parts.slice(1) : parts).join(' ');
    if (find('queue').textContent !== words) {
        find('queue').textContent = words;
    }
    find('queue').classList.toggle('waits', waiting + refused > 0);
    find('copy').hidden = waiting + refused === 0;
}

function row(reading) {
    const states = {
        kept: ['◌', 'kept in this device'],
        stored: ['●', `in the book${reading.revision ? `, revision ${reading.revision}` : ''}, ${new Date(reading.stored).toTimeString().slice(0, 5)}`],
        refused: ['▲', 'refused'],
    };
    const [mark, words] = states[reading.state];
    const elsewhere = reading.path !== place?.path && places.has(reading.path) ? nameOf(places.get(reading.path)) + ' ' : '';
    return made('li', { 'data-state': reading.state },
        made('span', { class: 'what number' }, reading.text),
        elsewhere && made('span', {}, elsewhere),
        made('span', { class: 'quiet' }, made('span', { class: 'mark', 'aria-hidden': 'true' }, mark), words),
        ...(reading.warnings ?? []).map(w => made('p', { class: 'caution' }, w)),
        reading.state === 'refused' && made('p', { class: 'refused' }, reading.sentence),
        reading.state === 'refused' && made('div', { class: 'row' },
            made('button', { type: 'button', click: () => correct(reading) }, 'Correct', made('span', { class: 'unseen' }, ` ${reading.text}`)),
            made('button', { type: 'button', click: () => discard(reading) }, 'Discard', made('span', { class: 'unseen' }, ` ${reading.text}`))));
}

function correct(reading) {
    if (places.has(reading.path)) {
        choose(places.get(reading.path), reading.path !== place?.path);
    }
    typed = reading.number;
    correcting = reading.id;
    drawNumber();
    find('display').focus();
}

async function discard(reading) {
    if (await ask(`Discard ${reading.text}? It is not in the book.`, 'Discard it')) {
        kept.drop(reading.id);
    }
}

/** Mean, scatter and ± of what was read here today of this field by this person with this instrument, as the book reckons them. */
function drawMean(all) {
    if (place.steps) {
        find('mean').textContent = '';
        return;
    }
    const today = dayOf(new Date());
    const same = all.filter(r => r.state !== 'refused' && r.path === place.path && r.with === liking.with && r.by === liking.who && dayOf(new Date(r.at)) === today);
    const unit = unitNow();
    const n = same.length;
    if (n === 0) {
        find('mean').textContent = '';
        return;
    }
    const mean = same.reduce((sum, r) => sum + r.si, 0) / n;
    const scatter = n > 1 ? Math.sqrt(same.reduce((sum, r) => sum + (r.si - mean) ** 2, 0) / (n - 1)) : 0;
    const instrument = Math.max(...same.map(r => r.spreadSi)) / 2;
    const combined = Math.sqrt(instrument ** 2 + scatter ** 2 / n);
    // Effective degrees of freedom (Welch and Satterthwaite): few repeats ask for a larger factor than 2.
    const freedom = scatter > 0 ? Math.max(1, Math.floor((n - 1) * (combined / scatter) ** 4 * n ** 2)) : Infinity;
    const factor = bench.factors[freedom - 1] ?? 2;
    const expanded = factor * combined;
    const decimals = Math.max(...same.map(r => (r.unit === unit.symbol ? r.number.split('.')[1]?.length ?? 0 : 3))) + (n > 1 ? 1 : 0);
    const spread = expanded > 0 ? ` ± ${withUnit(figures(expanded / unit.factor, 2), unit.symbol)} (k = ${figures(factor, 3)})` : '';
    find('mean').textContent = n === 1
        ? `1 reading, ${withUnit(((mean - unit.offset) / unit.factor).toFixed(decimals), unit.symbol)}${spread}`
        : `${n} readings, mean ${withUnit(((mean - unit.offset) / unit.factor).toFixed(decimals), unit.symbol)}${spread}, scatter s ${withUnit(figures(scatter / unit.factor, 2), unit.symbol)}`;
}

function dayOf(date) {
    return date.toDateString();
}

/** The readings that the book does not have, as commands for the host: an id keeps one from being taken twice. */
function commands() {
    const quoted = text => `'${text.replaceAll("'", "'\\''")}'`;
    return kept.all.filter(r => r.state !== 'stored')
        .map(r => `gudgeon measure ${quoted(bench.book)} ${quoted(r.path)} ${quoted(r.text)} --with ${quoted(r.with)} --by ${quoted(r.by)} --on ${quoted(r.on)} --id ${r.id}${r.note ? ` --note ${quoted(r.note)}` : ''}${r.partAt ? ` --part-at ${quoted(r.partAt)} --tool-at ${quoted(r.toolAt)}` : ''}`)
        .join('\n');
}

async function copy() {
    const answer = ask('These commands put the readings into the book on the host. They stay in this device too.', 'Copy', commands());
    find('ask-text').select();
    if (await answer) {
        find('ask-text').select();
        // The newer way to copy is not there on a plain http address.
        const done = document.execCommand('copy') || await navigator.clipboard?.writeText(find('ask-text').value).then(() => true, () => false);
        say(done ? '' : 'This browser does not let the page copy: mark the text and copy it by hand.');
    }
}

// ---- what the book makes of it

function stored({ detail: { reading, answer } }) {
    const of = places.get(reading.path);
    if (of && answer.holds) {
        of.holds = answer.holds;
    }
    if (of && of === place) {
        drawHolds();
        clearTimeout(watch);
        watch = setTimeout(() => verdicts(of), 0);
    }
}

async function verdicts(of) {
    let answer;
    try {
        const response = await fetch(`/book/${encodeURIComponent(bench.book)}/verdicts?path=${encodeURIComponent(of.path)}`);
        answer = response.ok ? await response.json() : null;
    } catch {
        answer = null;
    }
    if (of !== place) {
        return;
    }
    if (!answer || answer.state === 'working') {
        watch = setTimeout(() => verdicts(of), 2000);
    }
    if (answer) {
        drawVerdicts(answer);
    }
}

function drawVerdicts({ verdicts: list, waiting, state, sentence }) {
    const rest = waiting.map(title => made('p', { class: 'quiet' }, `${title}: ${state === 'working' ? 'follows when the engine run is worked' : 'not worked, the work was stopped'}`));
    find('verdicts').replaceChildren(
        made('h3', {}, 'What rests on it'),
        ...list.map(finding),
        ...rest,
        ...(list.length + rest.length === 0 ? [made('p', {}, state === 'working' ? 'Being worked…' : 'No check reads it.')] : []),
        ...(sentence ? [made('p', { class: 'refused' }, sentence)] : []));
}

function finding(f) {
    const mark = find(`verdict-${f.verdict}`).content.cloneNode(true);
    const details = [f.value, f.limit, f.reserve].filter(t => t).join('; ');
    return made('div', { class: 'finding' },
        made('p', {}, made('strong', {}, f.index ? `${f.title}, ${f.index} ` : `${f.title} `), mark),
        details && made('p', {}, details),
        f.advice && made('p', {}, f.advice),
        ...f.remedies.map(words => made('p', {}, `To decide it: ${words}`)),
        f.caution && f.verdict !== 'Holds' && made('p', { class: 'caution' }, f.caution));
}

async function photo() {
    const [file] = find('photo').files;
    const said = find('photo-said');
    if (!file || !place) {
        return;
    }
    said.textContent = 'Being sent…';
    try {
        const response = await fetch(`/book/${encodeURIComponent(bench.book)}/photos?path=${encodeURIComponent(place.path)}&name=${encodeURIComponent(file.name)}`, {
            method: 'POST', headers: { 'Content-Type': 'application/octet-stream' }, body: file,
        });
        said.textContent = response.headers.get('Content-Type')?.includes('json') ? (await response.json()).sentence : await response.text();
    } catch {
        said.textContent = 'The photo was not sent, for the program cannot be reached; it is still on this device, send it again later.';
    }
    find('photo').value = '';
}

/** Sends pasted readings; they are not kept on this device, so they stay in the box until the book has them. */
async function paste() {
    const said = find('paste-said');
    const words = new URLSearchParams({ with: liking.with, by: liking.who, on: localTime(new Date()).slice(0, 16).replace('T', ' ') });
    said.textContent = 'Being sent…';
    try {
        const response = await fetch(`/book/${encodeURIComponent(bench.book)}/sheets?${words}`, { method: 'POST', headers: { 'Content-Type': 'text/csv' }, body: find('sheet').value });
        const answer = response.headers.get('Content-Type')?.includes('json') ? await response.json() : { sentence: await response.text() };
        said.textContent = [answer.sentence, ...(answer.warnings ?? [])].join(' ');
        said.classList.toggle('refused', !response.ok);
        if (response.ok) {
            find('sheet').value = '';
        }
    } catch {
        said.textContent = 'The readings were not sent, for the program cannot be reached; they are still in the box, send them again later.';
    }
}

// ---- beginning

function liked(field, take) {
    find(field).addEventListener('change', () => {
        take(find(field).value.trim());
        remember();
        drawWith();
        draw();
    });
}

liked('with', value => {
    liking.with = value;
    liking.instruments = [value, ...liking.instruments.filter(i => i !== value)].filter(i => i).slice(0, 30);
});
liked('by', value => { liking.who = value; });
liked('spread', value => {
    const key = `${liking.with}|${fieldOf().dimension}`;
    liking.spreads[key] = value ? { text: value.replace(',', '.').replace(/^±\s*/, ''), unit: spreadNow()?.unit ?? unitNow().symbol } : null;
});
find('unit').addEventListener('change', () => {
    liking.units[`${bench.imperial ? 'imperial' : 'metric'}:${place.field}`] = find('unit').value;
    remember();
    drawWith();
    drawUsual();
    drawPlan();
    draw();
});
find('rounds').addEventListener('change', () => {
    liking.rounds = Number(find('rounds').value);
    remember();
    drawPlan();
});
find('step-back').addEventListener('click', stepBack);
find('search').addEventListener('input', drawPlaces);
find('other').addEventListener('click', () => choose(null, true));
find('take-it').addEventListener('click', take);
find('copy').addEventListener('click', copy);
find('paste').addEventListener('click', paste);
find('photo')?.addEventListener('change', photo);
document.querySelectorAll('[data-key]').forEach(b => b.addEventListener('click', () => press(b.dataset.key)));
document.addEventListener('keydown', typedKey);
addEventListener('popstate', () => choose(places.get(new URLSearchParams(location.search).get('field')) ?? null, false));
kept.addEventListener('change', draw);
kept.addEventListener('stored', stored);

// While the program is away, another look would be another page, and there is none to be had.
addEventListener('click', e => {
    if (kept.trouble && e.target.closest('[data-like]')) {
        e.stopImmediatePropagation();
        alert('The program cannot be reached now, and this page would be lost. Nothing was changed.');
    }
}, true);

kept.all.filter(r => r.state === 'stored' && dayOf(new Date(r.at)) !== dayOf(new Date())).forEach(r => kept.drop(r.id));
choose(places.get(bench.asked) ?? null, false);
kept.send();
gudgeonLive();
