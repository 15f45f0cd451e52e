import { renderUnicodeCompact } from "uqr";
import { addressOf } from "./environment.mjs";
import { hasNoMaterials } from "./workspace-state.mjs";

/**
 * What the terminal says once the program serves. The one place a first owner's code is ever written to.
 * `opened` is { mode, origins }, `authority` that of the certificate shown in the network, `code` null when there is an owner.
 */
export async function greet({ settings, opened, authority, code, databaseUrl }) {
  const here = addressOf(settings);
  const outside = opened.origins[0];
  console.log(`\nOpen ${here}`);
  if (opened.mode === null)
    console.log("Only this computer can reach it. To use it on a phone too: npm start -- --network");
  else sayOpened(opened, authority);
  if (code !== null) {
    console.log(`\nTo make the first sign-in, open ${outside ?? here}/sign-in/first and type this code:\n`);
    console.log(`    ${code}\n`);
    console.log("It works once. The next start makes another one.");
  }
  if (await hasNoMaterials(databaseUrl))
    console.log("The workspace is empty; the page offers a demo to look around in.");
  console.log("Stop it with Ctrl-C.");
}

function sayOpened({ mode, origins }, authority) {
  const [outside] = origins;
  if (mode === "proxy") {
    console.log(`Open to whoever reaches ${outside}; everybody signs in, here too.`);
    return;
  }
  console.log("Open to your network; everybody signs in, here too:");
  for (const origin of origins) console.log(`  ${origin}`);
  console.log(`\n${renderUnicodeCompact(outside)}\n`);
  console.log(`A device trusts it after taking the certificate at ${outside.replace("https:", "http:")}`);
  console.log(`Its fingerprint: ${authority.fingerprint}`);
}
