-- Who may come in. These tables are the house's, not a workspace's: a person looks at the house's workspace and at the demo
-- with one sign-in. Part 1 follows prisma/schema.prisma; part 2 is what the database itself refuses.

-- CreateTable
CREATE TABLE "house" (
    "id" INTEGER NOT NULL DEFAULT 1,
    "asks_sign_in" BOOLEAN NOT NULL DEFAULT false,

    CONSTRAINT "house_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "person" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "sign_in_address" TEXT NOT NULL,
    "address_verified" BOOLEAN NOT NULL DEFAULT false,
    "picture" TEXT,
    "role" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updated_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "person_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "person_session" (
    "id" TEXT NOT NULL,
    "token" TEXT NOT NULL,
    "person_id" TEXT NOT NULL,
    "expires_at" TIMESTAMPTZ(6) NOT NULL,
    "client_address" TEXT,
    "device" TEXT,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updated_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "person_session_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "person_credential" (
    "id" TEXT NOT NULL,
    "person_id" TEXT NOT NULL,
    "account_id" TEXT NOT NULL,
    "provider_id" TEXT NOT NULL,
    "password_hash" TEXT,
    "access_token" TEXT,
    "refresh_token" TEXT,
    "id_token" TEXT,
    "access_token_expires_at" TIMESTAMPTZ(6),
    "refresh_token_expires_at" TIMESTAMPTZ(6),
    "scope" TEXT,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updated_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "person_credential_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "person_passkey" (
    "id" TEXT NOT NULL,
    "name" TEXT,
    "public_key" TEXT NOT NULL,
    "person_id" TEXT NOT NULL,
    "credential_id" TEXT NOT NULL,
    "counter" INTEGER NOT NULL,
    "device_type" TEXT NOT NULL,
    "backed_up" BOOLEAN NOT NULL,
    "transports" TEXT,
    "aaguid" TEXT,
    "created_at" TIMESTAMPTZ(6) DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "person_passkey_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "sign_in_challenge" (
    "id" TEXT NOT NULL,
    "identifier" TEXT NOT NULL,
    "value" TEXT NOT NULL,
    "expires_at" TIMESTAMPTZ(6) NOT NULL,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updated_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "sign_in_challenge_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "sign_in_attempt" (
    "id" TEXT NOT NULL,
    "key" TEXT NOT NULL,
    "count" INTEGER NOT NULL,
    "last_request" BIGINT NOT NULL,

    CONSTRAINT "sign_in_attempt_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "one_time_code" (
    "id" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "code_hash" TEXT NOT NULL,
    "role" TEXT,
    "person_id" TEXT,
    "expires_at" TIMESTAMPTZ(6) NOT NULL,
    "used_at" TIMESTAMPTZ(6),
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "one_time_code_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "person_sign_in_address_key" ON "person"("sign_in_address");

-- CreateIndex
CREATE UNIQUE INDEX "person_session_token_key" ON "person_session"("token");

-- CreateIndex
CREATE INDEX "person_session_person_id_idx" ON "person_session"("person_id");

-- CreateIndex
CREATE INDEX "person_credential_person_id_idx" ON "person_credential"("person_id");

-- CreateIndex
CREATE UNIQUE INDEX "person_passkey_credential_id_key" ON "person_passkey"("credential_id");

-- CreateIndex
CREATE INDEX "person_passkey_person_id_idx" ON "person_passkey"("person_id");

-- CreateIndex
CREATE INDEX "sign_in_challenge_identifier_idx" ON "sign_in_challenge"("identifier");

-- CreateIndex
CREATE UNIQUE INDEX "sign_in_attempt_key_key" ON "sign_in_attempt"("key");

-- CreateIndex
CREATE UNIQUE INDEX "one_time_code_code_hash_key" ON "one_time_code"("code_hash");

-- AddForeignKey
ALTER TABLE "person_session" ADD CONSTRAINT "person_session_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "person_credential" ADD CONSTRAINT "person_credential_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "person_passkey" ADD CONSTRAINT "person_passkey_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "one_time_code" ADD CONSTRAINT "one_time_code_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- Part 2.

ALTER TABLE house ADD CONSTRAINT house_one CHECK (id = 1);
ALTER TABLE person
  ADD CONSTRAINT person_role CHECK (role IN ('owner', 'crew', 'reader')),
  ADD CONSTRAINT person_name CHECK (name = btrim(name) AND length(name) BETWEEN 1 AND 80);
ALTER TABLE one_time_code
  ADD CONSTRAINT one_time_code_kind CHECK (kind IN ('first', 'invite', 'pairing')),
  ADD CONSTRAINT one_time_code_role CHECK (role IN ('owner', 'crew', 'reader')),
  ADD CONSTRAINT one_time_code_whose CHECK ((kind = 'pairing') = (person_id IS NOT NULL)
    AND (kind = 'pairing') = (role IS NULL));

INSERT INTO house (id) VALUES (1);

-- The house cannot be left without an owner once it has one: nobody could let anybody in.
CREATE FUNCTION keep_an_owner() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  LOCK TABLE person IN SHARE ROW EXCLUSIVE MODE;
  IF NOT EXISTS (SELECT 1 FROM person WHERE role = 'owner') THEN
    RAISE EXCEPTION 'the last owner stays' USING ERRCODE = 'check_violation', CONSTRAINT = 'person_last_owner';
  END IF;
  RETURN NULL;
END $$;
CREATE TRIGGER person_last_owner_removed AFTER DELETE ON person
  FOR EACH ROW WHEN (OLD.role = 'owner') EXECUTE FUNCTION keep_an_owner();
CREATE TRIGGER person_last_owner_changed AFTER UPDATE OF role ON person
  FOR EACH ROW WHEN (OLD.role = 'owner') EXECUTE FUNCTION keep_an_owner();

-- Only a connection that says it is about sign-in sees these tables (lib/data/house-client.ts): a query gone wrong in a
-- workspace's transaction finds no password and no session. The tables' owner is bound too (FORCE).
DO $$
DECLARE
  noun text;
BEGIN
  FOREACH noun IN ARRAY ARRAY['house', 'person', 'person_session', 'person_credential', 'person_passkey',
    'sign_in_challenge', 'sign_in_attempt', 'one_time_code']
  LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY, FORCE ROW LEVEL SECURITY', noun);
    EXECUTE format('CREATE POLICY about_sign_in ON %I USING (current_setting(''app.house'', true) = ''on'')
      WITH CHECK (current_setting(''app.house'', true) = ''on'')', noun);
  END LOOP;
END $$;

DO $$
BEGIN
  IF EXISTS (SELECT 1 FROM pg_roles WHERE rolname = 'dunnage_app') THEN
    GRANT SELECT, UPDATE (asks_sign_in) ON house TO dunnage_app;
    GRANT SELECT, INSERT, UPDATE, DELETE ON person, person_session, person_credential, person_passkey,
      sign_in_challenge, sign_in_attempt, one_time_code TO dunnage_app;
  END IF;
END $$;
