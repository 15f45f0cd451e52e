import type { MetadataRoute } from "next";
import words from "./_words/en.json";

/** What a phone needs to put the program on its home screen. Static, so in the first language. */
export default function manifest(): MetadataRoute.Manifest {
  return {
    name: words.shell.name,
    short_name: words.shell.name,
    description: words.shell.tagline,
    start_url: "/",
    id: "/",
    display: "standalone",
    background_color: "#f6f3ea",
    theme_color: "#ffffff",
    icons: [
      { src: "/icon.svg", sizes: "any", type: "image/svg+xml" },
      { src: "/icons/icon-192.png", sizes: "192x192", type: "image/png" },
      { src: "/icons/icon-512.png", sizes: "512x512", type: "image/png" },
      { src: "/icons/maskable-512.png", sizes: "512x512", type: "image/png", purpose: "maskable" },
    ],
    shortcuts: [
      { name: words.materials.page.log, url: "/log" },
      { name: words.shell.projects, url: "/projects" },
    ],
  };
}
