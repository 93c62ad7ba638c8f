import { defineConfig } from "vitest/config"

// End-to-end tests need a built application and a browser, so they are a project of their own.
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: "unit",
          include: ["src/**/*.test.{ts,tsx}", "test/**/*.test.ts"],
          exclude: ["test/e2e/**", "test/validation/long/**"],
          testTimeout: 30_000,
        },
      },
      {
        test: {
          name: "long",
          include: ["test/validation/long/**/*.test.ts"],
          testTimeout: 900_000,
        },
      },
      {
        test: {
          name: "e2e",
          include: ["test/e2e/**/*.test.ts"],
          testTimeout: 300_000,
          hookTimeout: 300_000,
          fileParallelism: false,
        },
      },
    ],
  },
})
