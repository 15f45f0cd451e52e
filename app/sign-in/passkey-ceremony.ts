const AT = "/api/auth/passkey";
const NUMBER = /^[\d.]+$|^\[/;

/** Whether this browser knows passkeys at this address: they belong to a name, never to a number. */
export function canPasskey(): boolean {
  return (
    typeof PublicKeyCredential === "function" &&
    "parseCreationOptionsFromJSON" in PublicKeyCredential &&
    window.isSecureContext &&
    !NUMBER.test(window.location.hostname)
  );
}

async function options(which: string) {
  const response = await fetch(`${AT}/${which}`);
  if (!response.ok) throw new Error(`no ${which}`);
  return response.json();
}

async function verified(which: string, credential: Credential | null): Promise<boolean> {
  if (!(credential instanceof PublicKeyCredential)) return false;
  const response = await fetch(`${AT}/${which}`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ response: credential.toJSON() }),
  });
  return response.ok;
}

/** Makes a passkey on this device for whoever is signed in (Web Authentication, level 3). */
export async function addPasskey(): Promise<boolean> {
  const publicKey = PublicKeyCredential.parseCreationOptionsFromJSON(
    await options("generate-register-options"),
  );
  return verified("verify-registration", await navigator.credentials.create({ publicKey }));
}

/** Signs in by a passkey of this device. */
export async function enterByPasskey(): Promise<boolean> {
  const publicKey = PublicKeyCredential.parseRequestOptionsFromJSON(
    await options("generate-authenticate-options"),
  );
  return verified("verify-authentication", await navigator.credentials.get({ publicKey }));
}
