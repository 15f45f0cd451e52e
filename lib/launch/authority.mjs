import { X509Certificate } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { isIP } from "node:net";
import { join } from "node:path";
import { generate } from "selfsigned";

const DAY = 86_400_000;
const AUTHORITY_DAYS = 3650;
// Phones refuse certificates of servers that last longer than 825 days; 397 is what public ones may.
const SERVER_DAYS = 397;
const RENEW_BEFORE = 30 * DAY;

/**
 * The certificate this house shows in its network: of an authority of its own, made on first use and kept in DATA_DIR, and
 * made anew when the addresses have changed or it is about to end. Private keys are readable by their owner alone.
 * @returns {Promise<{ key: string, certificate: string, authority: { certificate: string, fingerprint: string } }>}
 */
export async function networkCertificate(dataDir, names) {
  const folder = join(dataDir, "network");
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const authority = await kept(folder, "authority", (made) => isCurrent(made), makeAuthority);
  const server = await kept(
    folder,
    "server",
    (made) => isCurrent(made) && names.every((name) => isFor(made, name)) && isOf(made, authority),
    () => makeServer(authority, names),
  );
  const { fingerprint256 } = new X509Certificate(authority.cert);
  return {
    key: server.key,
    certificate: server.cert,
    authority: { certificate: authority.cert, fingerprint: fingerprint256 },
  };
}

async function kept(folder, name, isGood, make) {
  const [keyPath, certPath] = [join(folder, `${name}-key.pem`), join(folder, `${name}.pem`)];
  if (existsSync(keyPath) && existsSync(certPath)) {
    const there = { key: readFileSync(keyPath, "utf8"), cert: readFileSync(certPath, "utf8") };
    if (isGood(there)) return there;
  }
  const made = await make();
  whole(keyPath, made.private, 0o600);
  whole(certPath, made.cert, 0o644);
  return { key: made.private, cert: made.cert };
}

function whole(path, text, mode) {
  writeFileSync(`${path}.new`, text, { mode, flush: true });
  renameSync(`${path}.new`, path);
}

const common = { keyType: "ec", curve: "P-256", algorithm: "sha256" };
const until = (days) => ({
  notBeforeDate: new Date(Date.now() - DAY), // a phone's clock may be behind
  notAfterDate: new Date(Date.now() + days * DAY),
});

function makeAuthority() {
  const name = `Dunnage authority of ${new Date().toISOString().slice(0, 10)}`; // a comma would end it
  return generate([{ name: "commonName", value: name }], {
    ...common,
    ...until(AUTHORITY_DAYS),
    extensions: [
      { name: "basicConstraints", cA: true, pathLenConstraint: 0, critical: true },
      { name: "keyUsage", keyCertSign: true, cRLSign: true, critical: true },
    ],
  });
}

function makeServer({ key, cert }, names) {
  const altNames = names.map((name) => (isIP(name) ? { type: 7, ip: name } : { type: 2, value: name }));
  return generate([{ name: "commonName", value: "Dunnage" }], {
    ...common,
    ...until(SERVER_DAYS),
    ca: { key, cert },
    extensions: [
      { name: "basicConstraints", cA: false, critical: true },
      { name: "keyUsage", digitalSignature: true, critical: true },
      { name: "extKeyUsage", serverAuth: true },
      { name: "subjectAltName", altNames },
    ],
  });
}

function isCurrent({ cert }) {
  return new Date(new X509Certificate(cert).validTo).getTime() - Date.now() > RENEW_BEFORE;
}

function isFor({ cert }, name) {
  const read = new X509Certificate(cert);
  return (isIP(name) ? read.checkIP(name) : read.checkHost(name)) !== undefined;
}

function isOf({ cert }, authority) {
  return new X509Certificate(cert).verify(new X509Certificate(authority.cert).publicKey);
}
