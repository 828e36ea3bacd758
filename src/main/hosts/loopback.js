import { randomBytes, timingSafeEqual } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { createServer } from 'node:http';
import { pipeline } from 'node:stream/promises';
import { refusal } from './dispatch.ts';
import { findPageFile, PAGE_HEADERS } from './page.ts';
export const LIMITS = { bodyBytes: 32 * 1024 * 1024, headersMs: 10000, requestMs: 60000, checkMs: 2000, connections: 64 };
/**
 * Serves the page and the procedures to this machine's own browser: 127.0.0.1 only, a port of the system's choosing, and a token
 * made anew at each start, without which no procedure answers.
 */
export async function startLoopback({ dispatch, log, renderer, limits: own }) {
    const limits = { ...LIMITS, ...own };
    const token = randomBytes(32).toString('base64url');
    const server = createServer({
        maxHeaderSize: 16 * 1024,
        headersTimeout: limits.headersMs,
        requestTimeout: limits.requestMs,
        connectionsCheckingInterval: limits.checkMs,
        keepAliveTimeout: 5000,
    });
    server.maxConnections = limits.connections;
    await listen(server);
    const host = `127.0.0.1:${server.address().port}`;
    const door = { host, origin: `http://${host}`, token, bodyBytes: limits.bodyBytes, renderer, dispatch };
    server.on('request', (request, response) => {
        for (const [name, value] of Object.entries(PAGE_HEADERS))
            response.setHeader(name, value);
        serve(door, request, response).catch((error) => {
            // a caller that went away in the middle is no fault of the program
            if (!request.destroyed)
                log('loopback', error);
            response.destroy();
        });
    });
    let closing;
    const close = () => {
        closing ??= new Promise((done) => {
            server.close(() => done());
            server.closeAllConnections();
        });
        return closing;
    };
    return { address: `${door.origin}/#token=${token}`, origin: door.origin, token, close };
}
function listen(server) {
    return new Promise((done, failed) => {
        server.once('error', failed);
        server.listen({ host: '127.0.0.1', port: 0, exclusive: true }, () => {
            server.off('error', failed);
            done();
        });
    });
}
async function serve(door, request, response) {
    // another name that points here is how a foreign page would reach this machine (DNS rebinding)
    if (request.headers.host !== door.host)
        return refuse(response, 421, 'host', 'This address is not served here.');
    const path = pathOf(request.url, door.origin);
    if (path === undefined)
        return refuse(response, 400, 'address', 'The address was not understood.');
    if (path.startsWith('/rpc/'))
        return serveCall(door, path.slice('/rpc/'.length), request, response);
    return servePage(door, path, request, response);
}
function pathOf(url, origin) {
    if (url === undefined || !url.startsWith('/'))
        return undefined;
    const parsed = URL.parse(origin + url);
    return parsed !== null && parsed.origin === origin ? parsed.pathname : undefined;
}
async function servePage(door, path, request, response) {
    if (request.method !== 'GET' && request.method !== 'HEAD') {
        response.setHeader('Allow', 'GET, HEAD');
        return refuse(response, 405, 'method', 'This can only be read.');
    }
    const file = await findPageFile(door.renderer, path);
    if (file === undefined)
        return refuse(response, 404, 'no file', 'There is no such file.');
    response.writeHead(200, { 'Content-Type': file.mediaType });
    if (request.method === 'HEAD')
        response.end();
    else
        await pipeline(createReadStream(file.path), response);
}
async function serveCall(door, name, request, response) {
    if (request.method !== 'POST') {
        response.setHeader('Allow', 'POST');
        return refuse(response, 405, 'method', 'A command is sent by POST.');
    }
    if (request.headers.origin !== door.origin)
        return refuse(response, 403, 'origin', 'Only the program’s own page may ask.');
    if (!carriesToken(request.headers.authorization, door.token)) {
        response.setHeader('WWW-Authenticate', 'Bearer');
        return refuse(response, 401, 'token', 'This page belongs to an earlier start of the program. Open the address that it printed last.');
    }
    if (!/^application\/json(?:\s*;\s*charset=utf-8)?$/i.test(request.headers['content-type'] ?? '')) {
        return refuse(response, 415, 'content type', 'A command is sent as JSON.');
    }
    const body = await readBody(request, door.bodyBytes);
    if (body === undefined)
        return refuse(response, 413, 'too large', 'That is more than the program takes at once.');
    const input = parseJson(body);
    if (input === undefined)
        return refuse(response, 400, 'json', 'The command is not JSON.');
    const answer = await door.dispatch(name, input.value);
    send(response, STATUS[answer.kind], answer.body);
}
const STATUS = { done: 200, unknown: 404, input: 400, bug: 500 };
function carriesToken(header, token) {
    const given = Buffer.from(header ?? '');
    const wanted = Buffer.from(`Bearer ${token}`);
    return given.length === wanted.length && timingSafeEqual(given, wanted);
}
/** The body as text, or undefined when it is larger than the limit: by its own word, or by what has come so far. */
async function readBody(request, limit) {
    if (Number(request.headers['content-length'] ?? 0) > limit)
        return undefined;
    const pieces = [];
    let bytes = 0;
    for await (const piece of request.iterator({ destroyOnReturn: false })) {
        bytes += piece.length;
        if (bytes > limit)
            return undefined;
        pieces.push(piece);
    }
    return Buffer.concat(pieces).toString('utf8');
}
function parseJson(text) {
    try {
        return { value: JSON.parse(text) };
    }
    catch {
        return undefined;
    }
}
/** Refuses and lets the connection go, so that whatever else the caller meant to send is not read. */
function refuse(response, status, code, sentence) {
    response.setHeader('Connection', 'close');
    send(response, status, refusal(code, '', sentence));
}
function send(response, status, body) {
    const text = JSON.stringify(body);
    response.writeHead(status, { 'Content-Type': 'application/json; charset=utf-8', 'Content-Length': Buffer.byteLength(text) });
    response.end(text);
}
