/** The certificate of this house's own authority, for a phone to trust. Public: it holds no secret. */
export function GET(): Response {
  const pem = process.env.DUNNAGE_AUTHORITY;
  if (!pem) return new Response("The program is not open to the network.", { status: 404 });
  return new Response(pem, { headers: { "content-type": "application/x-x509-ca-cert" } });
}
