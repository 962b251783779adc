// POST a timed set as JSON, get its reading: curl -d @set.json localhost:3000
import { createServer } from 'node:http';
import { json } from 'node:stream/consumers';
import { isPacingError, readSet } from 'backhalf';

const server = createServer(async (request, response) => {
  const answer = (status, body) => {
    response.writeHead(status, { 'content-type': 'application/json' });
    response.end(JSON.stringify(body));
  };
  try {
    answer(200, readSet(await json(request)));
  } catch (error) {
    // The library's sentence is fit for the caller; anything else is not JSON.
    if (isPacingError(error)) answer(422, { code: error.code, message: error.message });
    else answer(400, { code: 'no-json', message: 'Send a timed set as JSON.' });
  }
});

server.listen(Number(process.env.PORT ?? 3000), 'localhost', () => {
  console.log(`http://localhost:${server.address().port}`);
});
