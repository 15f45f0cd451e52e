import { getTranslations } from "next-intl/server";
import type { RoomText } from "../../../lib/show/place-text.ts";
import { NotKnown } from "../../_ui/money-text.tsx";
import { TapeGauge } from "../../_ui/tape-gauge.tsx";
import { unitWords } from "../../_words/unit-words.ts";
import style from "./places.module.css";

type RoomsProps = Readonly<{
  rooms: readonly RoomText[];
  materialName: (id: string) => string;
}>;

/** How full a place is by each of its limits, with a tape; where a size is not known, which, and that it is "at least". */
export async function Rooms({ rooms, materialName }: RoomsProps) {
  const t = await getTranslations("places");
  const units = await unitWords();
  if (rooms.length === 0) return <NotKnown>{t("noLimits")}</NotKnown>;
  return (
    <ul className={style.rooms}>
      {rooms.map((room) => {
        const words = {
          what: t(`limits.${room.measure}`),
          used: room.used,
          limit: room.limit,
          free: room.free,
          over: room.over ?? "none",
          unit: units.of(room.unit, "2"),
          sure: room.unknown.length === 0 ? "yes" : "no",
        };
        return (
          <li key={room.measure}>
            <span className={room.over ? style.over : undefined}>{t("room", words)}</span>
            <TapeGauge share={room.share} label={t("roomGauge", words)} />
            {room.unknown.length > 0 ? (
              <NotKnown>
                {t("roomUnknown", { materials: room.unknown.map(materialName).join("; ") })}
              </NotKnown>
            ) : null}
          </li>
        );
      })}
    </ul>
  );
}
