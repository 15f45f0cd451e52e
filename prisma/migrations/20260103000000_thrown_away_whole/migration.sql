-- A workspace goes with everything in it: these two go in the same sweep as what they refer to, not after it, when the
-- reference would already be broken.
ALTER TABLE "requirement_alternative" ADD CONSTRAINT "requirement_alternative_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;
ALTER TABLE "stock_event" ADD CONSTRAINT "stock_event_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;
