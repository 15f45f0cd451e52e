import pg from "pg";

/** The name the launcher's connections carry: whoever holds one open is using the server. */
export const PRESENCE = "dunnage launcher";

/**
 * A connection of the launcher; a server that dies while it is open shows in the next query and in "end".
 * @param {string} url
 */
export async function connected(url) {
  const client = new pg.Client({
    connectionString: url,
    connectionTimeoutMillis: 3000,
    application_name: PRESENCE,
  });
  client.on("error", () => {}); // without a listener the event would end the program
  await client.connect();
  return client;
}

/**
 * Does the work on a connection of its own.
 * @template T
 * @param {string} url
 * @param {(client: pg.Client) => Promise<T>} work
 * @returns {Promise<T>}
 */
export async function onConnection(url, work) {
  const client = await connected(url);
  try {
    return await work(client);
  } finally {
    await client.end().catch(() => {});
  }
}

/** Whether a server answers queries there. */
export async function answers(url) {
  try {
    await onConnection(url, (client) => client.query("select 1"));
    return true;
  } catch {
    return false;
  }
}
