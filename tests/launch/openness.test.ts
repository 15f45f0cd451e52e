import { describe, expect, test } from "vitest";
import { addressesHere, openness } from "../../lib/launch/openness.mjs";
import { Refusal } from "../../lib/launch/refusal.mjs";

const own = { port: 3000 };

describe("how the house is open", () => {
  test("unless asked, not at all", () => {
    expect(openness(own, {}, [])).toEqual({ mode: null, port: null, origins: [] });
    expect(openness(own, { OPEN: "", PUBLIC_ADDRESS: "" }, [])).toEqual(openness(own, {}, []));
  });

  test("to the network by the flag or by OPEN, on a port of its own", () => {
    for (const opened of [openness(own, {}, ["--network"]), openness(own, { OPEN: "network" }, [])]) {
      expect([opened.mode, opened.port]).toEqual(["network", 3443]);
      for (const origin of opened.origins) expect(origin).toMatch(/^https:\/\/.+:3443$/);
    }
    expect(openness(own, { OPEN: "network", NETWORK_PORT: "8443" }, []).port).toBe(8443);
  });

  test("behind a proxy of the person's own by its address, which is the only name it goes by", () => {
    const given = { PUBLIC_ADDRESS: "https://prices.example.org" };
    expect(openness(own, given, [])).toEqual({ mode: "proxy", port: null, origins: [given.PUBLIC_ADDRESS] });
  });

  test.each([
    ["OPEN", "everybody"],
    ["NETWORK_PORT", "70000"],
    ["PUBLIC_ADDRESS", "http://prices.example.org"],
    ["PUBLIC_ADDRESS", "https://prices.example.org/path"],
  ])("refuses %s=%s by name", (name, value) => {
    expect(() => openness(own, { [name]: value }, [])).toThrow(Refusal);
    expect(() => openness(own, { [name]: value }, [])).toThrow(new RegExp(`^${name} `));
  });

  test("names the addresses of other devices' view first, and link-local ones never", () => {
    const one = (address: string, family: "IPv4" | "IPv6", internal = false) =>
      ({ address, family, internal, netmask: "", mac: "", cidr: null, scopeid: 0 }) as const;
    const interfaces = {
      lo: [one("127.0.0.1", "IPv4", true)],
      wlan: [one("fe80::1", "IPv6"), one("fd00::2", "IPv6"), one("192.168.1.5", "IPv4")],
    };
    expect(addressesHere(interfaces, "House")).toEqual([
      "192.168.1.5",
      "fd00::2",
      "house.local",
      "localhost",
      "127.0.0.1",
    ]);
  });
});
